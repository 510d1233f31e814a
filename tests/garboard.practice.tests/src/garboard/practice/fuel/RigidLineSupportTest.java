// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class RigidLineSupportTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    private Judged clip(String distance) {
        line.setKind(FuelLineKind.COPPER_NICKEL_TUBE);
        record.getFuelSupply().setRigidLineSupportDistance(Length.valueOf(distance));
        return judge(RigidLineSupport.check(), record);
    }

    @Test
    void fourInchesAreTheLimit() {
        // Gerr: 100 mm (4 in) from the joint
        clip("100 mm").meets();
        clip("4 in").meets();
        clip("105 mm").fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToHose() {
        clip("1 m");
        line.setKind(FuelLineKind.HOSE_A1);
        judge(RigidLineSupport.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheDistance() {
        line.setKind(FuelLineKind.STEEL_TUBE);
        judge(RigidLineSupport.check(), record).cannotTell("fuelSupply.rigidLineSupportDistance");
    }
}
