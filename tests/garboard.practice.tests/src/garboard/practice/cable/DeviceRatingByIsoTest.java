// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.InsulationRating;
import garboard.model.ProtectionKind;
import garboard.quantity.Current;

class DeviceRatingByIsoTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void fused() {
        run.setProtection(ProtectionKind.FUSE);
        run.setConductorSize("16 mm2");
        run.setInsulation(InsulationRating.C105);
        run.setInEngineSpace(Answer.YES);
        run.setConductorsInBundle(1);
    }

    // ISO 13297 (quoted): never above the permitted current; ISO 10133 annex A (from memory): 130 A x 0.86 = 111.8 A
    @ParameterizedTest
    @CsvSource({ "110 A, MEETS", "111.8 A, MEETS", "125 A, FALLS_SHORT", "0.125 kA, FALLS_SHORT" })
    void neverAboveThePermittedCurrent(String rating, Standing standing) {
        run.setProtectionRating(Current.valueOf(rating));
        judge(DeviceRatingByIso.check(), record).is(standing).limit(111.8, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestThatWillDo() {
        run.setProtectionRating(Current.of(125, "A"));
        judge(DeviceRatingByIso.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionRating().si()).isEqualTo(110); // NFPA 70, 240.6 (from memory)
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(DeviceRatingByIso.check(), record).cannotTell("startingBattery.cables[0].protectionRating");
    }

    @Test
    void doesNotApplyToACableOfThreePhases() {
        Iso13297Scope.isKept(DeviceRatingByIso.check(), record, run);
    }

    @Test
    void doesNotApplyToGauges() {
        run.setConductorSize("4 AWG");
        judge(DeviceRatingByIso.check(), record).doesNotApply();
    }
}
