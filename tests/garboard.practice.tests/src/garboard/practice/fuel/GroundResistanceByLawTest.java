// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Resistance;

class GroundResistanceByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged resistance(String measured) {
        record.getFuelSupply().setGroundResistance(Resistance.valueOf(measured));
        return judge(GroundResistanceByLaw.check(), record);
    }

    @Test
    void lessThanAHundredOhm() {
        // 33 CFR 183.572, from memory: 99 ohm pass, 100 ohm fail
        resistance("99 ohm").meets();
        resistance("100 ohm").fallsShort();
        resistance("0.1 kohm").fallsShort();
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        resistance("1 Mohm").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(GroundResistanceByLaw.check(), record).cannotTell("fuelSupply.groundResistance");
    }
}
