// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class ParticularsSheetTest {

    private final Table table = Sheets.tables(Sheets.sample(), "Particulars").getFirst();

    @Test
    void keepsWhatThePersonGaveAndSetsTheConvertedBesideIt() {
        int row = Sheets.row(table, "52 gal");
        assertThat(Sheets.number(table, row, "Value")).isCloseTo(196.841, offset(1e-3)); // NIST SP 811: 1 US gal = 3.785412 L
        assertThat(Sheets.text(Sheets.cell(table, row, "Unit"))).isEqualTo("L");
        assertThat(Sheets.row(table, "12.74 V ±0.5 %")).isPositive();
        assertThat(Sheets.row(table, "3/4 in")).isPositive();
    }

    @Test
    void countsWhatIsNotEnteredAndDoesNotListIt() {
        assertThat(Sheets.row(table, "Vessel    (12 of 21 entered)")).isPositive(); // 21 fields in the model's outline
        assertThat(Sheets.words(Sheets.sample(), "Particulars")).doesNotContain("Flag").doesNotContain("Passengers");
    }

    @Test
    void namesElementsOfLists() {
        String words = Sheets.words(Sheets.sample(), "Particulars");
        assertThat(words).contains("Positive to starter").contains("Is the exhaust free of soot at every joint?")
            .contains("One clamp at the muffler retightened.");
    }

    @Test
    void tellsPlacesInDirections() {
        assertThat(Sheets.words(Sheets.sample(), "Particulars")).contains("forward -2.35 m, to starboard 700 mm, up 420 mm");
    }
}
