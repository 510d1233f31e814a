// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class ParticularsSheetTest {

    private static final String SHEET = "Particulars";

    private final Report report = Sheets.sample();

    @Test
    void keepsWhatThePersonGaveAndSetsTheConvertedBesideIt() {
        Table table = Sheets.tableWith(report, SHEET, "52 gal");
        int row = Sheets.row(table, "52 gal");
        assertThat(Sheets.number(table, row, "Value")).isCloseTo(196.841, offset(1e-3)); // NIST SP 811: 1 US gal = 3.785412 L
        assertThat(Sheets.text(Sheets.cell(table, row, "Unit"))).isEqualTo("L");
        assertThat(Sheets.words(report, SHEET)).contains("12.74 V ±0.5 %");
    }

    @Test
    void setsTheConvertedInBracketsInLists() {
        assertThat(Sheets.words(report, SHEET)).contains("3/4 in (19.1 mm)"); // 19.05 mm to three figures; NIST SP 811: 1 in = 25.4 mm
        assertThat(Sheets.words(report, SHEET)).contains("\n1.9 m\n"); // metres already: nothing beside it
    }

    @Test
    void speaksOfEachFieldInTheUnitThatPeopleUseForIt() {
        Table table = Sheets.tableWith(report, SHEET, "3.2 h");
        int row = Sheets.row(table, "3.2 h");
        assertThat(Sheets.number(table, row, "Value")).isCloseTo(3.2, offset(1e-9)); // hour meters count hours, whatever time is counted in elsewhere
        assertThat(Sheets.text(Sheets.cell(table, row, "Unit"))).isEqualTo("h");
    }

    @Test
    void countsWhatIsNotEnteredAndDoesNotListIt() {
        assertThat(Sheets.words(report, SHEET)).contains("Vessel  (12 of 21 entered)"); // 21 fields in the model's outline
        assertThat(Sheets.words(report, SHEET)).doesNotContain("Flag").doesNotContain("Passengers");
    }

    @Test
    void namesElementsOfLists() {
        String words = Sheets.words(report, SHEET);
        assertThat(words).contains("Positive to starter").contains("Is the exhaust free of soot at every joint?")
            .contains("One clamp at the muffler retightened.");
    }

    @Test
    void tellsPlacesInDirections() {
        assertThat(Sheets.words(report, SHEET)).contains("forward -2.35 m, to starboard 700 mm, up 420 mm");
    }
}
