// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NAME_PLATE_READABLE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class NamePlateInAnyBoatTest {

    @Test
    void answered() { // 46 CFR 183.320(d) as a yardstick
        Question.of(NamePlateInAnyBoat.check(), AC_OUTPUT__NAME_PLATE_READABLE).at(CommissioningRecord::getAcOutput)
            .demands(Answer.YES, "acOutput.namePlateReadable");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        CommissioningRecord record = Installation.empty();
        Board.passengers(record);
        judge(NamePlateInAnyBoat.check(), record).doesNotApply();
    }
}
