// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_DETECTOR;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class VapourDetectorFittedTest {

    @Test
    void answered() { // common practice
        Question.of(VapourDetectorFitted.check(), ALARMS_AND_SAFETY__VAPOUR_DETECTOR).at(CommissioningRecord::getAlarms)
            .in(record -> record.getGeneratorSet().setFuel(FuelKind.GASOLINE)).wants(Answer.YES, "alarms.vapourDetector");
    }

    @Test
    void doesNotApplyToDieselOrWhereTheLawSpeaks() {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(VapourDetectorFitted.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        judge(VapourDetectorFitted.check(), record).doesNotApply();
    }
}
