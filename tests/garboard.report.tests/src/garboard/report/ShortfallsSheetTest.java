// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.quantity.UnitSystem;

class ShortfallsSheetTest {

    private final String words = Sheets.words(Sheets.sample(), "Shortfalls");

    @Test
    void tellsWhyItMattersAndWhatWouldMakeItMeet() {
        assertThat(words).contains("A seat under water breaks no siphon: the sea fills the set.").contains("Raise the vent seat by 80 mm.")
            .contains("420 mm measured, 500 mm limit (a handbook)");
    }

    @Test
    void tellsWhoAcceptedWhat() {
        assertThat(words).contains("Tomas Reyes, 2031-05-03: Hauled out in October, replaced then");
    }

    @Test
    void tellsWhatIsMissing() {
        assertThat(words).contains("MONOXIDE-ALARM").contains("Cannot tell (1)");
    }

    @Test
    void doesNotNameWhatMeets() {
        assertThat(words).doesNotContain("BACK-PRESSURE").doesNotContain("VAPOUR-DETECTOR");
    }

    @Test
    void isLeftOutWhenThereIsNothingToTell() {
        var record = SampleRecord.make();
        record.getAcceptances().clear();
        var meets = SamplePractice.evaluate(record).with(Standing.MEETS);
        var evaluation = new Evaluation(meets, List.of(), java.time.LocalDate.of(2031, 5, 4));
        Optional<Sheet> sheet = ShortfallsSheet.of(Material.of(record, evaluation, Sheets.options(UnitSystem.SI)));
        assertThat(sheet).isEmpty();
    }
}
