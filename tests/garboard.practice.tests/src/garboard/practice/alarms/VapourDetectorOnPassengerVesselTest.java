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

class VapourDetectorOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 182.410(c), 182.480: fuel of a flash point up to 43.3 degC (110 F)
        Question.of(VapourDetectorOnPassengerVessel.check(), ALARMS_AND_SAFETY__VAPOUR_DETECTOR).at(CommissioningRecord::getAlarms).in(record -> {
            record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
            record.getVessel().setService(VesselService.SMALL_PASSENGER);
        }).demands(Answer.YES, "alarms.vapourDetector");
    }

    @Test
    void doesNotApplyToDieselOrOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(VapourDetectorOnPassengerVessel.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(VapourDetectorOnPassengerVessel.check(), record).doesNotApply();
    }
}
