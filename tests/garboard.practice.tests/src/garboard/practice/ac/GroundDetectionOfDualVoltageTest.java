// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__GROUND_DETECTION;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.VesselService;
import garboard.practice.testing.Question;

class GroundDetectionOfDualVoltageTest {

    @Test
    void answered() { // 46 CFR 183.324
        Question.of(GroundDetectionOfDualVoltage.check(), AC_OUTPUT__GROUND_DETECTION).at(CommissioningRecord::getAcOutput).in(record -> {
            Board.passengers(record);
            record.getGeneratorSet().setPhases(PhaseSystem.SPLIT_PHASE);
            record.getAcOutput().setNeutralBond(NeutralBond.AT_SWITCHBOARD);
        }).demands(Answer.YES, "acOutput.groundDetection");
    }

    @Test
    void doesNotApplyToOtherSetsAndVessels() {
        CommissioningRecord record = Board.set("8 kVA", "240 V", PhaseSystem.SPLIT_PHASE);
        record.getAcOutput().setNeutralBond(NeutralBond.AT_SWITCHBOARD);
        record.getVessel().setService(VesselService.FISHING);
        judge(GroundDetectionOfDualVoltage.check(), record).doesNotApply();
        Board.passengers(record);
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        judge(GroundDetectionOfDualVoltage.check(), record).doesNotApply();
        record.getGeneratorSet().setPhases(PhaseSystem.SPLIT_PHASE);
        record.getAcOutput().setNeutralBond(NeutralBond.NONE); // told by 46 CFR 183.378
        judge(GroundDetectionOfDualVoltage.check(), record).doesNotApply();
    }
}
