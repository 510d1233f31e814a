// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.MotorStarting;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;

class DemandWithinApparentPowerTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged set(String apparent) {
        record.getGeneratorSet().setRatedPower(Power.of(12, "kW"));
        record.getGeneratorSet().setRatedApparentPower(ApparentPower.valueOf(apparent));
        return judge(DemandWithinApparentPower.check(), record);
    }

    // IMO EEDI guideline form, P and Q summed apart: 12.0 kW and 9.0 kvar -> 15.0 kVA
    @Test
    void activeAndReactivePowerAreSummedApart() {
        Board.motor(record, "12 kW", "0.8", MotorStarting.DIRECT_ON_LINE);
        set("15 kVA").meets().measured(15, "kVA", 1e-9);
        set("14.9 kVA").fallsShort();
    }

    @Test
    void aResistiveLoadNeedsNoPowerFactor() {
        Board.load(record, "heater", "12 kW", "1");
        set("12 kVA").meets().measured(12, "kVA", 1e-9);
    }

    @Test
    void stepsBackWhereTheActivePowerIsTooMuch() {
        Board.load(record, "heater", "13 kW", "1");
        set("12 kVA").doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        Board.motor(record, "12 kW", "0.8", MotorStarting.DIRECT_ON_LINE).setPowerFactor(null);
        record.getGeneratorSet().setRatedPower(Power.of(12, "kW"));
        judge(DemandWithinApparentPower.check(), record).cannotTell("acOutput.loads[0].powerFactor", "generatorSet.ratedPowerFactor");
    }
}
