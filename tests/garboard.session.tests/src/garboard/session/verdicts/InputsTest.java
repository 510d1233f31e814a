// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Verdict;
import garboard.model.Labels;
import garboard.quantity.Length;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;

class InputsTest {

    private final OpenRecord made = Judged.made();

    @Test
    void leadsToWhatIsMissing() {
        assertThat(Inputs.target(Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-2]"))).isEqualTo("rawWater.hoses[hose-2].clampsPerEnd");
    }

    @Test
    void leadsToWhatTheRemedyChanges() {
        assertThat(Inputs.target(Judged.verdict(made, "SEAT-HIGH", "rawWater.siphonBreak"))).isEqualTo("rawWater.siphonBreak.ventSeat.z");
    }

    @Test
    void leadsElseToWhatDecides() {
        assertThat(Inputs.target(Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-1]"))).isEqualTo("rawWater.hoses[hose-1].clampsPerEnd");
        assertThat(Inputs.target(Judged.verdict(made, "REMOTE-STOP", "alarms"))).isEqualTo("alarms.remoteStop");
    }

    @Test
    void namesAListAsAWholeAndPartsThatTheRecordHasOnceByTheirWay() {
        OpenRecord cruiser = Judged.example("motor-cruiser");

        assertThat(Inputs.keys(Judged.verdict(cruiser, "CABLE-CRANKING-RESISTANCE", "startingBattery"))).containsExactly("startingBattery.cables");
        assertThat(Inputs.keys(Judged.verdict(cruiser, "RAWWATER-RAM-HEAD", "rawWater")))
            .containsExactly("vessel.speed", "rawWater.siphonBreak.ventSeat.z");
    }

    @Test
    void tellsAnEnteredValueFromAComputedOne() {
        Verdict high = Judged.verdict(made, "SEAT-HIGH", "rawWater.siphonBreak");

        assertThat(Inputs.isEntered(made, high, high.measured().orElseThrow())).isTrue();
        assertThat(Inputs.isEntered(made, high, Length.of(0.2))).isFalse();
    }

    /** No verdict leads nowhere: each place that it names is one of the record and has words. */
    @ParameterizedTest
    @ValueSource(strings = {"motor-cruiser", "sailing-yacht", "passenger-boat"})
    void everyVerdictOfTheExamplesLeadsToAPlaceOfTheRecord(String name) {
        OpenRecord record = Judged.example(name);
        Labels labels = Labels.in(Locale.GERMAN);
        for (Verdict verdict : record.verdicts().evaluation().verdicts()) {
            assertThat(RecordKey.of(record.record(), Inputs.target(verdict))).as(verdict.check().id() + " " + Inputs.target(verdict)).isPresent();
            assertThat(Inputs.keys(verdict)).as(verdict.check().id()).isNotEmpty()
                .allSatisfy(key -> assertThat(RecordKey.of(record.record(), key).orElseThrow().words(labels)).isNotBlank());
        }
    }
}
