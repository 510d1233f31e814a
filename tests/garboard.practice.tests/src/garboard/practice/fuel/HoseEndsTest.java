// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class HoseEndsTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    private Judged barbed(Answer answer) {
        line.setKind(FuelLineKind.HOSE_A1);
        line.setBarbedEnds(answer);
        return judge(HoseEnds.check(), record);
    }

    @Test
    void ringedBarbsAreWanted() {
        // Gerr: ringed barbs, not threads or cross-cut
        barbed(Answer.YES).meets();
        barbed(Answer.NO).fallsShort();
    }

    @Test
    void doesNotApplyToTubeOrWhenMarkedSo() {
        barbed(Answer.NOT_APPLICABLE).doesNotApply();
        barbed(Answer.NO);
        line.setKind(FuelLineKind.COPPER_TUBE);
        judge(HoseEnds.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        barbed(Answer.UNANSWERED).cannotTell("fuelSupply.lines[line-1].barbedEnds");
    }
}
