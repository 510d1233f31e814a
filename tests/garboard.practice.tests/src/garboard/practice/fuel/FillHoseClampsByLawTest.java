// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class FillHoseClampsByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged clamps(int count, String band) {
        record.getFuelSupply().setFillHoseClamps(count);
        record.getFuelSupply().setFillClampBandWidth(Length.valueOf(band));
        return judge(FillHoseClampsByLaw.check(), record);
    }

    @Test
    void twoClampsOfHalfAnInch() {
        // 33 CFR 183.564: 2 clamps 0.5 in pass, 2 clamps 0.4375 in fail, 1 clamp 0.5 in fails
        clamps(2, "0.5 in").meets();
        clamps(2, "12.7 mm").meets();
        clamps(2, "0.4375 in").fallsShort().limit(0.5, "in", 1e-9).afterRemedy().meets();
        clamps(1, "0.5 in").fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        clamps(0, "0.1 in").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheClamps() {
        judge(FillHoseClampsByLaw.check(), record).cannotTell("fuelSupply.fillHoseClamps", "fuelSupply.fillClampBandWidth");
    }
}
