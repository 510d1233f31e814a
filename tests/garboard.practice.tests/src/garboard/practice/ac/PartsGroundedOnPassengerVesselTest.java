// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__EARTHED_PARTS_BONDED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class PartsGroundedOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.372
        Question.of(PartsGroundedOnPassengerVessel.check(), AC_OUTPUT__EARTHED_PARTS_BONDED).at(CommissioningRecord::getAcOutput).in(Board::passengers)
            .demands(Answer.YES, "acOutput.earthedPartsBonded");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(PartsGroundedOnPassengerVessel.check(), record).doesNotApply();
    }
}
