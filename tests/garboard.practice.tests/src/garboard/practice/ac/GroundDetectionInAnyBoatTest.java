// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__GROUND_DETECTION;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class GroundDetectionInAnyBoatTest {

    @Test
    void answered() { // 46 CFR 183.378 as a yardstick
        Question.of(GroundDetectionInAnyBoat.check(), AC_OUTPUT__GROUND_DETECTION).at(CommissioningRecord::getAcOutput)
            .in(record -> record.getAcOutput().setNeutralBond(NeutralBond.NONE)).demands(Answer.YES, "acOutput.groundDetection");
    }

    @Test
    void doesNotApplyToGroundedSystemsOrWhereTheLawSpeaks() {
        CommissioningRecord record = Installation.empty();
        record.getAcOutput().setNeutralBond(NeutralBond.AT_GENERATOR);
        judge(GroundDetectionInAnyBoat.check(), record).doesNotApply();
        record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        Board.passengers(record);
        judge(GroundDetectionInAnyBoat.check(), record).doesNotApply();
    }
}
