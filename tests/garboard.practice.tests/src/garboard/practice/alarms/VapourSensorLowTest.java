// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class VapourSensorLowTest {

    @Test
    void answered() { // 46 CFR 182.480 as a yardstick
        Question.of(VapourSensorLow.check(), ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW).at(CommissioningRecord::getAlarms)
            .in(record -> record.getAlarms().setVapourDetector(Answer.YES)).demands(Answer.YES, "alarms.vapourSensorLow");
    }

    @Test
    void doesNotApplyWithoutADetectorOrWhereTheLawSpeaks() {
        CommissioningRecord record = Installation.empty();
        record.getAlarms().setVapourDetector(Answer.NO);
        judge(VapourSensorLow.check(), record).doesNotApply();
        record.getAlarms().setVapourDetector(Answer.YES);
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        judge(VapourSensorLow.check(), record).doesNotApply();
    }
}
