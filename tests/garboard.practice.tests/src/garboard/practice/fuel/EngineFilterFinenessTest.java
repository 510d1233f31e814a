// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class EngineFilterFinenessTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged fineness(String fineness) {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getFuelSupply().getSeparator().setOnEngineFineness(Length.valueOf(fineness));
        return judge(EngineFilterFineness.check(), record);
    }

    @Test
    void twoToTenMicrometres() {
        // Marine Diesel Basics 1: 2 um on the engine; up to 10 um common practice
        fineness("2 um").meets();
        fineness("10 um").meets();
        fineness("1 um").fallsShort();
        fineness("12 um").fallsShort();
    }

    @Test
    void doesNotApplyToGasoline() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        judge(EngineFilterFineness.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheFineness() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(EngineFilterFineness.check(), record).cannotTell("fuelSupply.separator.onEngineFineness");
    }
}
