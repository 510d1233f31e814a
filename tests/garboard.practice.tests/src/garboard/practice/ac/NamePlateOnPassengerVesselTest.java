// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NAME_PLATE_READABLE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class NamePlateOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.320(d)
        Question.of(NamePlateOnPassengerVessel.check(), AC_OUTPUT__NAME_PLATE_READABLE).at(CommissioningRecord::getAcOutput).in(Board::passengers)
            .demands(Answer.YES, "acOutput.namePlateReadable");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(NamePlateOnPassengerVessel.check(), record).doesNotApply();
    }
}
