// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class SeparatorFinenessTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged fineness(FuelKind fuel, FuelSystem system, String fineness) {
        record.getGeneratorSet().setFuel(fuel);
        record.getGeneratorSet().setFuelSystem(system);
        record.getFuelSupply().getSeparator().setFineness(Length.valueOf(fineness));
        return judge(SeparatorFineness.check(), record);
    }

    @Test
    void dieselMayBeCoarser() {
        // common practice: 10 um, up to 30 um; Marine Diesel Basics 1: 10 um
        fineness(FuelKind.DIESEL, FuelSystem.MECHANICAL_INJECTION, "10 um").meets();
        fineness(FuelKind.DIESEL, FuelSystem.MECHANICAL_INJECTION, "30 um").meets();
        fineness(FuelKind.DIESEL, FuelSystem.COMMON_RAIL, "31 um").fallsShort().limit(30, "um", 1e-6);
    }

    @Test
    void injectedGasolineNeedsTenMicrometres() {
        // common practice: 10 um, water-separating
        fineness(FuelKind.GASOLINE, FuelSystem.PORT_INJECTION, "0.010 mm").meets();
        fineness(FuelKind.GASOLINE, FuelSystem.PORT_INJECTION, "30 um").fallsShort().afterRemedy().meets();
    }

    @Test
    void makersFinenessReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setFilterFineness(Length.of(5, "um"));
        fineness(FuelKind.DIESEL, FuelSystem.COMMON_RAIL, "10 um").fallsShort().limitFromMaker();
    }

    @Test
    void doesNotApplyToCarburettors() {
        fineness(FuelKind.GASOLINE, FuelSystem.CARBURETTOR, "90 um").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheFineness() {
        record.getGeneratorSet().setFuelSystem(FuelSystem.COMMON_RAIL);
        judge(SeparatorFineness.check(), record).cannotTell("fuelSupply.separator.fineness", "generatorSet.fuel");
    }
}
