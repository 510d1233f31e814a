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

class DeviceRatingInAnyBoatTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        run.setProtection(ProtectionKind.FUSE);
        run.setConductorSize("10 AWG");
        run.setInsulation(InsulationRating.C105);
    }

    // 33 CFR 183.455(c)(1), literal: 150 % of the 60 A of Table 5 is 90 A; 6 mm2 contains 10 AWG (5.26 mm2), not 9 AWG (6.63 mm2)
    @ParameterizedTest
    @CsvSource({ "10 AWG, 90 A, MEETS", "10 AWG, 0.0901 kA, FALLS_SHORT", "6 mm2, 90 A, MEETS", "6 mm2, 91 A, FALLS_SHORT" })
    void oneAndAHalfTimesTheTable(String size, String rating, Standing standing) {
        run.setConductorSize(size);
        run.setProtectionRating(Current.valueOf(rating));
        judge(DeviceRatingInAnyBoat.check(), record).is(standing).limit(90, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestThatWillDo() {
        run.setProtectionRating(Current.of(200, "A"));
        judge(DeviceRatingInAnyBoat.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionRating().si()).isEqualTo(90); // NFPA 70, 240.6 (from memory) lists 90 A
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(DeviceRatingInAnyBoat.check(), record).cannotTell("startingBattery.cables[0].protectionRating");
    }

    @Test
    void doesNotApplyWithGasolineOrWithoutADevice() {
        run.setProtectionRating(Current.of(200, "A"));
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        judge(DeviceRatingInAnyBoat.check(), record).doesNotApply();
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        run.setProtection(ProtectionKind.NONE);
        judge(DeviceRatingInAnyBoat.check(), record).doesNotApply();
    }
}
