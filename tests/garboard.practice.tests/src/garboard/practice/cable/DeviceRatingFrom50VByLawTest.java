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
import garboard.practice.testing.Installation;
import garboard.quantity.Current;

class DeviceRatingFrom50VByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final CableRun output = record.getAcOutput().getOutputCable();

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        output.setInsulation(InsulationRating.C105);
    }

    private void cable(String size, Answer engineSpace, int together, String device) {
        output.setConductorSize(size);
        output.setInEngineSpace(engineSpace);
        output.setConductorsInBundle(together);
        record.getAcOutput().setProtectionRating(Current.valueOf(device));
    }

    // 33 CFR 183.455(c)(2) and Table 5 with its notes: 35.7 A -> 40 A, 51.0 A -> 60 A, 60 A -> 60 A, 18.0 A -> 20 A; 60 A on 35.7 A is beyond 150 %.
    // Standard ratings: NFPA 70, 240.6, from memory
    @ParameterizedTest
    @CsvSource({ "10 AWG, YES, 3, 40 A, 40, MEETS", "10 AWG, YES, 3, 60 A, 40, FALLS_SHORT", "6 AWG, YES, 7, 60 A, 60, MEETS",
        "6 AWG, YES, 7, 70 A, 60, FALLS_SHORT",
        "10 AWG, NO, 1, 60 A, 60, MEETS", "12 AWG, NO, 25, 20 A, 20, MEETS", "12 AWG, NO, 25, 25 A, 20, FALLS_SHORT",
        "12 AWG, NO, 25, 20000 mA, 20, MEETS" })
    void nextStandardRating(String size, Answer engineSpace, int together, String device, double mostA, Standing standing) {
        cable(size, engineSpace, together, device);
        judge(DeviceRatingFrom50VByLaw.check(), record).is(standing).limit(mostA, "A", 1e-9);
    }

    @Test
    void beyondTheStandardRatingsThePermittedCurrentCounts() {
        cable("4/0 AWG", Answer.NO, 1, "450 A"); // 33 CFR 183.425 Table 5: 445 A; NFPA 70, 240.6 as remembered ends at 400 A
        judge(DeviceRatingFrom50VByLaw.check(), record).fallsShort().limit(445, "A", 1e-9).afterRemedy().meets();
    }

    @Test
    void theStandardRatingsEndAt400A() {
        output.setInsulation(InsulationRating.C125);
        cable("3/0 AWG", Answer.NO, 1, "410 A"); // 33 CFR 183.425 Table 5: 410 A
        judge(DeviceRatingFrom50VByLaw.check(), record).meets().limit(410, "A", 1e-9);
    }

    @Test
    void belowTheStandardRatingsThePermittedCurrentCounts() {
        cable("18 AWG", Answer.YES, 25, "10 A"); // 33 CFR 183.425 Table 5: 20 A x 0.85 x 0.40 = 6.8 A
        judge(DeviceRatingFrom50VByLaw.check(), record).fallsShort().limit(6.8, "A", 1e-9).afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating()).isEqualTo(Current.of(6, "A"));
    }

    @Test
    void remedyIsTheLargestThatWillDo() {
        cable("10 AWG", Answer.YES, 3, "60 A");
        judge(DeviceRatingFrom50VByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating().si()).isEqualTo(40);
    }

    @Test
    void aBranchHasItsOwnDevice() {
        record.getAcOutput().setOutputCable(null);
        CableRun branch = Wiring.add(record, CableFunction.AC_BRANCH);
        branch.setConductorSize("10 AWG");
        branch.setInsulation(InsulationRating.C105);
        branch.setInEngineSpace(Answer.YES);
        branch.setConductorsInBundle(3);
        judge(DeviceRatingFrom50VByLaw.check(), record).cannotTell("startingBattery.cables[0].protectionRating");
        branch.setProtectionRating(Current.of(60, "A"));
        judge(DeviceRatingFrom50VByLaw.check(), record).fallsShort().afterRemedy().meets();
        branch.setProtection(ProtectionKind.NONE);
        judge(DeviceRatingFrom50VByLaw.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheRating() {
        output.setConductorSize("10 AWG");
        output.setInEngineSpace(Answer.NO);
        output.setConductorsInBundle(3);
        judge(DeviceRatingFrom50VByLaw.check(), record).cannotTell("acOutput.protectionRating");
    }

    @Test
    void doesNotApplyWithoutADeviceOrOnOtherBoats() {
        cable("10 AWG", Answer.YES, 3, "60 A");
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(DeviceRatingFrom50VByLaw.check(), record).doesNotApply();
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(DeviceRatingFrom50VByLaw.check(), record).doesNotApply();
    }
}
