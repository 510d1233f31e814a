// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.ElectricalLoad;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;
import garboard.model.PhaseSystem;
import garboard.quantity.Ratio;

class NonLinearLoadTest {

    private final CommissioningRecord record = Board.set("4 kVA", "230 V", PhaseSystem.SINGLE_PHASE);

    private void charger(String input, String powerFactor) {
        ElectricalLoad charger = Board.load(record, "charger", input, "0.1");
        charger.setKind(LoadKind.CHARGER);
        charger.setPowerFactor(Ratio.valueOf(powerFactor));
    }

    // U I / (efficiency pf): 28.8 V x 50 A / (.88 x .70) = 2.34 kVA; common practice: 60 % of 4 kVA are 2.4 kVA
    @Test
    void atMostSixtyPerCent() {
        charger("1.6364 kW", "0.7"); // 28.8 V x 50 A / 0.88
        judge(NonLinearLoad.check(), record).meets().measured(2.34, "kVA", 0.005).limit(2.4, "kVA", 1e-9);
        Board.load(record, "heater", "9 kW", "1");
        judge(NonLinearLoad.check(), record).meets();
        charger("0.1 kW", "1");
        judge(NonLinearLoad.check(), record).fallsShort();
    }

    @Test
    void exactlySixtyPerCent() {
        charger("2.4 kW", "1");
        judge(NonLinearLoad.check(), record).meets();
    }

    @Test
    void aDriveIsNonLinearAndAMotorIsNot() {
        ElectricalLoad motor = Board.motor(record, "3 kW", "0.8", MotorStarting.DIRECT_ON_LINE);
        judge(NonLinearLoad.check(), record).meets().measured(0, "kVA", 1e-9);
        motor.setStarting(MotorStarting.VARIABLE_SPEED);
        judge(NonLinearLoad.check(), record).fallsShort().measured(3.75, "kVA", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NonLinearLoad.check(), record).cannotTell("acOutput.loads.power", "acOutput.loads.demandFactor");
    }
}
