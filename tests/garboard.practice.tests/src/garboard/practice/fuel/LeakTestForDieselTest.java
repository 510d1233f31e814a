// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

class LeakTestForDieselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        record.getFuelSupply().setLeakTestHeld(Answer.YES);
        record.getFuelSupply().getTank().getTop().setZ(Length.of(0));
        record.getFuelSupply().setHighestLinePoint(Length.of(0));
    }

    private Judged test(String lowest, String pressure) {
        record.getFuelSupply().setLowestLinePoint(Length.valueOf(lowest));
        record.getFuelSupply().setLeakTestPressure(GaugePressure.valueOf(pressure));
        return judge(LeakTestForDiesel.check(), record);
    }

    @Test
    void pressureByHead() {
        // after 33 CFR 183.542; recomputed for diesel of 840 kg/m3: 2.0 m give 24.7 kPa, below 1.67 m 3 psi govern
        test("-2.0 m", "24 kPa").fallsShort().limit(24.7, "kPa", 0.05);
        test("-2.0 m", "25 kPa").meets();
        test("-1.5 m", "3 psi").meets();
    }

    @Test
    void doesNotApplyWhereTheLawDoes() {
        FuelLines.underGasolineLaw(record);
        test("-2.0 m", "1 kPa").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheTest() {
        judge(LeakTestForDiesel.check(), record).cannotTell("fuelSupply.leakTestPressure", "fuelSupply.lowestLinePoint");
    }
}
