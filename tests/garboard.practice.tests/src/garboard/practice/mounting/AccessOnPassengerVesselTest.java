// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ACCESS_FOR_SERVICE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class AccessOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.320(a)
        Question.of(AccessOnPassengerVessel.check(), MOUNTING__ACCESS_FOR_SERVICE).at(CommissioningRecord::getMounting)
            .in(record -> record.getVessel().setService(VesselService.SMALL_PASSENGER)).demands(Answer.YES, "mounting.accessForService");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(AccessOnPassengerVessel.check(), record).doesNotApply();
    }
}
