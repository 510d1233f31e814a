// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__GROUND_DETECTION;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class GroundDetectionOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.378
        Question.of(GroundDetectionOnPassengerVessel.check(), AC_OUTPUT__GROUND_DETECTION).at(CommissioningRecord::getAcOutput).in(record -> {
            Board.passengers(record);
            record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        }).demands(Answer.YES, "acOutput.groundDetection");
    }

    @Test
    void doesNotApplyToGroundedSystemsAndOtherVessels() {
        CommissioningRecord record = Installation.empty();
        Board.passengers(record);
        record.getAcOutput().setNeutralBond(NeutralBond.AT_SWITCHBOARD);
        judge(GroundDetectionOnPassengerVessel.check(), record).doesNotApply();
        record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(GroundDetectionOnPassengerVessel.check(), record).doesNotApply();
    }
}
