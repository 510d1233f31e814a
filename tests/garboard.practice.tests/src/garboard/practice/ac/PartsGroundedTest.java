// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__EARTHED_PARTS_BONDED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class PartsGroundedTest {

    @Test
    void answered() { // 46 CFR 183.372 as a yardstick
        Question.of(PartsGrounded.check(), AC_OUTPUT__EARTHED_PARTS_BONDED).at(CommissioningRecord::getAcOutput)
            .wants(Answer.YES, "acOutput.earthedPartsBonded");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        CommissioningRecord record = Installation.empty();
        Board.passengers(record);
        judge(PartsGrounded.check(), record).doesNotApply();
    }
}
