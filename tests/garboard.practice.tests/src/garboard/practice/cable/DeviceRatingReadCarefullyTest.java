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

class DeviceRatingReadCarefullyTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void fused() {
        run.setProtection(ProtectionKind.FUSE);
        run.setConductorSize("10 AWG");
        run.setInsulation(InsulationRating.C105);
    }

    // 150 % of 33 CFR 183.425 Table 5 after note 1: 10 AWG at 105 degC 76.5 A in an engine space
    @ParameterizedTest
    @CsvSource({ "70 A, MEETS", "76.5 A, MEETS", "80 A, FALLS_SHORT", "80000 mA, FALLS_SHORT" })
    void oneAndAHalfTimesWhatItMayCarry(String rating, Standing standing) {
        run.setProtectionRating(Current.valueOf(rating));
        run.setInEngineSpace(Answer.YES);
        judge(DeviceRatingReadCarefully.check(), record).is(standing).limit(76.5, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestUsualFuse() {
        run.setProtectionRating(Current.of(90, "A"));
        run.setInEngineSpace(Answer.YES);
        judge(DeviceRatingReadCarefully.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionRating().si()).isEqualTo(70); // NFPA 70, 240.6 (from memory): 70 A is the last below 76.5 A
    }

    @Test
    void doesNotApplyOutsideEngineSpaces() {
        run.setProtectionRating(Current.of(100, "A"));
        run.setInEngineSpace(Answer.NO);
        judge(DeviceRatingReadCarefully.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DeviceRatingReadCarefully.check(), record).cannotTell("startingBattery.cables[0].protectionRating",
            "startingBattery.cables[0].inEngineSpace");
    }

    @Test
    void doesNotApplyWithoutADevice() {
        run.setProtection(ProtectionKind.NONE);
        judge(DeviceRatingReadCarefully.check(), record).doesNotApply();
    }
}
