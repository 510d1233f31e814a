// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.quantity.UnitSystem;

class ChecksSheetTest {

    private final Table table = Sheets.tables(Sheets.sample(), "Checks").getFirst();

    @Test
    void printsMeasuredLimitAndMarginInOneUnit() {
        int row = Sheets.row(table, "SEAT-HEIGHT");
        assertThat(Sheets.text(Sheets.cell(table, row, "Standing"))).isEqualTo("falls short");
        assertThat(Sheets.number(table, row, "Measured")).isEqualTo(420);
        assertThat(Sheets.number(table, row, "Limit")).isEqualTo(500);
        assertThat(Sheets.text(Sheets.cell(table, row, "Unit"))).isEqualTo("mm");
        assertThat(Sheets.number(table, row, "Margin")).isEqualTo(-80);
        assertThat(Sheets.number(table, row, "Margin %")).isEqualTo(-16); // -80 / 500
        assertThat(Sheets.cell(table, row, "Margin")).isInstanceOf(Cell.Computed.class);
    }

    @Test
    void marginOfAnUpperLimitIsPositiveBelowIt() {
        int row = Sheets.row(table, "BACK-PRESSURE");
        // NIST SP 811, table B.8: 1 inHg = 3.386389 kPa, 1 inH2O = 0.2490889 kPa (both conventional)
        assertThat(Sheets.number(table, row, "Measured")).isCloseTo(38.2 * 0.2490889, offset(1e-5));
        assertThat(Sheets.number(table, row, "Limit")).isCloseTo(3 * 3.386389, offset(1e-5));
        assertThat(Sheets.number(table, row, "Margin")).isCloseTo(10.159167 - 9.515196, offset(1e-5));
        assertThat(Sheets.text(Sheets.cell(table, row, "Basis"))).startsWith("Limit used: maker's limit").endsWith("common practice");
    }

    @Test
    void temperatureHasAMarginInDegreesAndNoPerCent() {
        int row = Sheets.row(table, "COOLANT-LIMIT");
        assertThat(Sheets.number(table, row, "Margin")).isCloseTo(110 - 173 / 1.8, offset(1e-9));
        assertThat(Sheets.cell(table, row, "Margin %")).isEqualTo(Cell.BLANK);
    }

    @Test
    void verdictsWithoutFiguresLeaveTheFiguresBlank() {
        int row = Sheets.row(table, "SEACOCK-KIND");
        assertThat(Sheets.cell(table, row, "Measured")).isEqualTo(Cell.BLANK);
        assertThat(Sheets.cell(table, row, "Margin")).isEqualTo(Cell.BLANK);
        assertThat(Sheets.text(Sheets.cell(table, row, "Standing"))).isEqualTo("accepted");
    }

    @Test
    void everyVerdictThatAppliesIsThereOnce() {
        long rows = table.rows().stream().filter(row -> row.kind() == Table.RowKind.BODY).count();
        assertThat(rows).isEqualTo(7); // eight in the sample, one of which does not apply
    }

    @Test
    void theOthersStandOnASheetOfTheirOwnWithTheReason() {
        Table others = Sheets.tables(Sheets.sample(), "Not applicable").getFirst();
        Verdict other = SamplePractice.evaluate(SampleRecord.make()).with(Standing.DOES_NOT_APPLY).getFirst();
        int row = Sheets.row(others, other.check().id());
        assertThat(Sheets.text(Sheets.cell(others, row, "Why"))).isEqualToIgnoringCase(other.sentence());
        assertThat(Sheets.number(others, row, "Verdicts")).isEqualTo(1);
        assertThat(Sheets.number(others, Sheets.row(others, "All"), "Verdicts")).isEqualTo(1);
        assertThat(Sheets.words(Sheets.sample(), "Checks")).doesNotContain(other.check().id());
    }

    @Test
    void standsUnderTheSystemThatItSpeaksOf() {
        int group = Sheets.row(table, "Raw-water circuit");
        assertThat(table.rows().get(group).kind()).isEqualTo(Table.RowKind.GROUP);
        assertThat(Sheets.row(table, "SEAT-HEIGHT")).isGreaterThan(group).isLessThan(Sheets.row(table, "BACK-PRESSURE"));
    }

    @Test
    void turnsToTheReadersUnits() {
        var record = SampleRecord.make();
        Report report = Reports.compose(record, SamplePractice.evaluate(record), Sheets.options(UnitSystem.US));
        Table customary = Sheets.tables(report, "Checks").getFirst();
        int row = Sheets.row(customary, "SEAT-HEIGHT");
        assertThat(Sheets.text(Sheets.cell(customary, row, "Unit"))).isEqualTo("in");
        assertThat(Sheets.number(customary, row, "Margin")).isCloseTo(-80 / 25.4, offset(1e-9)); // an inch is 25.4 mm
    }
}
