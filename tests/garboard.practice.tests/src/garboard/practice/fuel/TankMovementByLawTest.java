// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class TankMovementByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged moves(String by) {
        record.getFuelSupply().getTank().setMovement(Length.valueOf(by));
        return judge(TankMovementByLaw.check(), record);
    }

    @Test
    void aQuarterInchIsTheLimit() {
        // 33 CFR 183.550: 0.25 in pass, 0.26 in fail
        moves("0.25 in").meets();
        moves("6.35 mm").meets();
        moves("0.26 in").fallsShort().limit(0.25, "in", 1e-9);
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        moves("1 in").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheMovement() {
        judge(TankMovementByLaw.check(), record).cannotTell("fuelSupply.tank.movement");
    }
}
