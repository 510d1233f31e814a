// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MULTI_STRAND_COPPER;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class StrandedByLawTest {

    @Test
    void answered() { // 33 CFR 183.425
        Question.of(StrandedByLaw.check(), CABLE_RUN__MULTI_STRAND_COPPER).at(record -> record.getStartingBattery().getCables().getFirst())
            .in(record -> {
                record.getAcOutput().setOutputCable(null);
                Wiring.add(record, CableFunction.OTHER_DC);
                record.getVessel().setGasolineEngineAboard(Answer.YES);
            })
            .demands(Answer.YES, "startingBattery.cables[0].multiStrandCopper");
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        CommissioningRecord record = Wiring.withoutOutputCable();
        Wiring.add(record, CableFunction.OTHER_DC).setMultiStrandCopper(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(StrandedByLaw.check(), record).doesNotApply();
    }
}
