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

class DeviceRatingByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        run.setProtection(ProtectionKind.FUSE);
        run.setConductorSize("10 AWG");
        run.setInsulation(InsulationRating.C105);
    }

    // 33 CFR 183.455(c)(1), literal: 150 % of the 60 A of Table 5 is 90 A, in an engine space too
    @ParameterizedTest
    @CsvSource({ "90 A, NO, MEETS", "90 A, YES, MEETS", "80 A, UNANSWERED, MEETS", "91 A, NO, FALLS_SHORT", "0.1 kA, YES, FALLS_SHORT" })
    void oneAndAHalfTimesTheTable(String rating, Answer engineSpace, Standing standing) {
        run.setProtectionRating(Current.valueOf(rating));
        run.setInEngineSpace(engineSpace);
        judge(DeviceRatingByLaw.check(), record).is(standing).limit(90, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestThatWillDo() {
        run.setProtectionRating(Current.of(100, "A"));
        judge(DeviceRatingByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionRating().si()).isEqualTo(90);
    }

    @Test
    void fallsShortBelowTheTable() {
        run.setConductorSize("20 AWG");
        run.setProtectionRating(Current.of(5, "A"));
        judge(DeviceRatingByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(DeviceRatingByLaw.check(), record).cannotTell("startingBattery.cables[0].protectionRating");
    }

    @Test
    void doesNotApplyWithoutADeviceOrGasoline() {
        run.setProtection(ProtectionKind.NONE);
        judge(DeviceRatingByLaw.check(), record).doesNotApply();
        run.setProtection(ProtectionKind.FUSE);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(DeviceRatingByLaw.check(), record).doesNotApply();
    }
}
