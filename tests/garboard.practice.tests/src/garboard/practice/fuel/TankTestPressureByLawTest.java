// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;

class TankTestPressureByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged tested(String at, String label) {
        record.getFuelSupply().getTank().setTestPressure(GaugePressure.valueOf(at));
        record.getFuelSupply().getTank().setTestPressureOnLabel(GaugePressure.valueOf(label));
        return judge(TankTestPressureByLaw.check(), record);
    }

    @Test
    void pressureOfTheLabel() {
        // 33 CFR 183.580: static test at the pressure on the label
        tested("3 psi", "3 psi").meets();
        tested("20.7 kPa", "3 psi").meets();
        tested("2.9 psi", "3 psi").fallsShort().limit(3, "psi", 1e-9);
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        tested("0 psi", "3 psi").doesNotApply();
    }

    @Test
    void cannotTellWithoutThePressures() {
        judge(TankTestPressureByLaw.check(), record).cannotTell("fuelSupply.tank.testPressure", "fuelSupply.tank.testPressureOnLabel");
    }
}
