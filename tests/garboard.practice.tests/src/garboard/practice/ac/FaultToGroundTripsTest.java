// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.TripCurve;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;
import garboard.quantity.Ratio;

class FaultToGroundTripsTest {

    private final CommissioningRecord record = Board.set("25 kVA", "400 V", PhaseSystem.THREE_PHASE);
    private final AcOutput output = record.getAcOutput();

    private void breaker(TripCurve curve, String rating, double multiple) {
        output.setNeutralBond(NeutralBond.AT_GENERATOR);
        output.setResidualCurrentDevice(Answer.NO);
        output.setTripCurve(curve);
        output.setProtectionRating(Current.valueOf(rating));
        record.getGeneratorSet().setSustainedShortCircuitMultiple(Ratio.of(multiple));
    }

    // IEC 60898-1 from memory: B trips from 5 times, C from 10, D from 20; 25 kVA 400 V at 3 times: 108 A; B40 needs up to 200 A, C40 up to 400 A
    @ParameterizedTest
    @CsvSource({ "TYPE_B, 40 A, 3, FALLS_SHORT", "TYPE_C, 40 A, 3, FALLS_SHORT", "TYPE_B, 20 A, 3, MEETS", "TYPE_C, 20 A, 3, FALLS_SHORT",
        "TYPE_C, 10 A, 3, MEETS", "TYPE_D, 10 A, 3, FALLS_SHORT", "TYPE_D, 5 A, 3, MEETS", "THERMAL_ONLY, 10 A, 3, FALLS_SHORT",
        "ELECTRONIC, 40 A, 3, MEETS" })
    void theBreakerTripsAtOnce(TripCurve curve, String rating, double multiple, Standing standing) {
        breaker(curve, rating, multiple);
        judge(FaultToGroundTrips.check(), record).is(standing);
    }

    @Test
    void tellsTheTwoCurrents() {
        breaker(TripCurve.TYPE_B, "40 A", 3);
        assertThat(judge(FaultToGroundTrips.check(), record).verdict().sentence()).contains("108 A").contains("200 A");
    }

    @Test
    void aResidualCurrentDeviceIsEnough() {
        breaker(TripCurve.TYPE_C, "40 A", 3);
        output.setResidualCurrentDevice(Answer.YES);
        judge(FaultToGroundTrips.check(), record).meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        CommissioningRecord empty = Installation.empty();
        judge(FaultToGroundTrips.check(), empty).cannotTell("acOutput.neutralBond", "acOutput.residualCurrentDevice");
        empty.getAcOutput().setNeutralBond(NeutralBond.AT_GENERATOR);
        empty.getAcOutput().setResidualCurrentDevice(Answer.NO);
        judge(FaultToGroundTrips.check(), empty).cannotTell("acOutput.tripCurve");
        empty.getAcOutput().setTripCurve(TripCurve.TYPE_B);
        judge(FaultToGroundTrips.check(), empty).cannotTell("acOutput.protectionRating", "generatorSet.sustainedShortCircuitMultiple",
            "generatorSet.ratedVoltage", "generatorSet.phases", "generatorSet.ratedPower", "generatorSet.ratedPowerFactor");
    }

    @Test
    void doesNotApplyToUngroundedSystems() {
        output.setNeutralBond(NeutralBond.NONE);
        judge(FaultToGroundTrips.check(), record).doesNotApply();
    }
}
