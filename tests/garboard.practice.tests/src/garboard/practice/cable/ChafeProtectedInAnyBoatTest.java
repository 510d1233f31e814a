// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CHAFE_PROTECTED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class ChafeProtectedInAnyBoatTest {

    @Test
    void answered() { // 33 CFR 183.445 as practice
        Question.of(ChafeProtectedInAnyBoat.check(), CABLE_RUN__CHAFE_PROTECTED).at(record -> record.getStartingBattery().getCables().getFirst())
            .in(record -> {
                record.getAcOutput().setOutputCable(null);
                Wiring.add(record, CableFunction.OTHER_DC);
                record.getVessel().setGasolineEngineAboard(Answer.NO);
            })
            .wants(Answer.YES, "startingBattery.cables[0].chafeProtected");
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        CommissioningRecord record = Wiring.withoutOutputCable();
        Wiring.add(record, CableFunction.OTHER_DC).setChafeProtected(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        judge(ChafeProtectedInAnyBoat.check(), record).doesNotApply();
    }
}
