// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class LoadAnalysisSheetTest {

    private final Table table = Sheets.tables(Sheets.sample(), "Load analysis").getFirst();

    @Test
    void worksOutInputDemandAndReactivePower() {
        int charger = Sheets.row(table, "Battery charger");
        // recomputed by hand: 1.5 / 0.92 = 1.630435; x 0.8 = 1.304348; tan(acos 0.95) = 0.328684
        assertThat(Sheets.number(table, charger, "Input kW")).isCloseTo(1.630435, offset(1e-6));
        assertThat(Sheets.number(table, charger, "Demand kW")).isCloseTo(1.304348, offset(1e-6));
        assertThat(Sheets.number(table, charger, "Demand kvar")).isCloseTo(1.304348 * 0.328684, offset(1e-5));
        assertThat(Sheets.number(table, charger, "Demand kVA")).isCloseTo(1.304348 / 0.95, offset(1e-5));
    }

    @Test
    void countsOnlyTheLargerOfTwoThatExcludeEachOther() {
        assertThat(Sheets.number(table, Sheets.row(table, "Water heater"), "Counted")).isZero(); // 1.2 kW against 2 x 0.7 = 1.4 kW
        assertThat(Sheets.number(table, Sheets.row(table, "Galley hob"), "Counted")).isEqualTo(1);
    }

    @Test
    void setsTheDemandAgainstTheRating() {
        int all = Sheets.row(table, "All");
        // 1.304348 + 1.4 + 1.1 / 0.78
        assertThat(Sheets.number(table, all, "Demand kW")).isCloseTo(4.114604, offset(1e-6));
        int share = Sheets.row(table, "Demand in % of the rating");
        assertThat(Sheets.number(table, share, "Demand kW")).isCloseTo(4.114604 / 6 * 100, offset(1e-4));
    }
}
