// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.AntiSiphonProtection;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class AntiSiphonForDieselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselBoat() {
        FuelLines.outsideGasolineLaw(record);
    }

    private Judged by(AntiSiphonProtection protection) {
        record.getFuelSupply().setAntiSiphon(protection);
        return judge(AntiSiphonForDiesel.check(), record);
    }

    @Test
    void anyProtectionMeets() {
        // after 33 CFR 183.568, advised for diesel
        by(AntiSiphonProtection.LINE_ABOVE_TANK_TOP).meets();
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).meets();
        by(AntiSiphonProtection.NONE).fallsShort();
    }

    @Test
    void doesNotApplyWhereTheLawDoes() {
        FuelLines.underGasolineLaw(record);
        by(AntiSiphonProtection.NONE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheArrangement() {
        judge(AntiSiphonForDiesel.check(), record).cannotTell("fuelSupply.antiSiphon");
    }
}
