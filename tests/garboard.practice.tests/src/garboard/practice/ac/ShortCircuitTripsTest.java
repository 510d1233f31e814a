// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.model.TripCurve;
import garboard.quantity.Current;
import garboard.quantity.Ratio;

class ShortCircuitTripsTest {

    private final CommissioningRecord record = Board.set("25 kVA", "400 V", PhaseSystem.THREE_PHASE);
    private final AcOutput output = record.getAcOutput();

    private void breaker(TripCurve curve, String rating) {
        output.setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        output.setResidualCurrentDevice(Answer.YES);
        output.setTripCurve(curve);
        output.setProtectionRating(Current.valueOf(rating));
        record.getGeneratorSet().setSustainedShortCircuitMultiple(Ratio.of(3));
    }

    // IEC 60898-1 from memory; 25 kVA 400 V at 3 times: 108 A
    @ParameterizedTest
    @CsvSource({ "TYPE_B, 40 A, FALLS_SHORT", "TYPE_B, 20 A, MEETS", "TYPE_C, 20 A, FALLS_SHORT", "THERMAL_ONLY, 20 A, FALLS_SHORT", "ELECTRONIC, 40 A, MEETS" })
    void tripsAtOnce(TripCurve curve, String rating, Standing standing) {
        breaker(curve, rating);
        judge(ShortCircuitTrips.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutInputs() {
        breaker(TripCurve.TYPE_B, "40 A");
        record.getGeneratorSet().setSustainedShortCircuitMultiple(null);
        output.setProtectionRating(null);
        judge(ShortCircuitTrips.check(), record).cannotTell("generatorSet.sustainedShortCircuitMultiple", "acOutput.protectionRating");
    }

    @Test
    void doesNotApplyToFusesAndWithoutAResidualCurrentDevice() {
        breaker(TripCurve.TYPE_B, "40 A");
        output.setResidualCurrentDevice(Answer.NO); // told as a fault to ground
        judge(ShortCircuitTrips.check(), record).doesNotApply();
        breaker(TripCurve.TYPE_B, "40 A");
        output.setProtectionDevice(ProtectionKind.FUSE);
        judge(ShortCircuitTrips.check(), record).doesNotApply();
    }
}
