// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;

class FeedPressureTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aPortInjectedGasolineSet() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setFuelSystem(FuelSystem.PORT_INJECTION);
    }

    private Judged pressure(String reading) {
        record.getFuelSupply().setFeedPressure(GaugePressure.valueOf(reading));
        return judge(FeedPressure.check(), record);
    }

    @Test
    void usualRange() {
        // common practice: 3 to 5 psi
        pressure("3 psi").meets();
        pressure("5 psi").meets();
        pressure("2.9 psi").fallsShort().limit(3, "psi", 1e-9);
        pressure("5.1 psi").fallsShort().limit(5, "psi", 1e-9);
    }

    @Test
    void unitsDoNotMatter() {
        // 3 psi are 20.7 kPa, 5 psi 34.5 kPa
        pressure("20.7 kPa").meets();
        pressure("34.4 kPa").meets();
        pressure("35 kPa").fallsShort();
    }

    @Test
    void makersRangeReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setFeedPressureLow(GaugePressure.of(6, "psi"));
        record.getGeneratorSet().getMakerLimits().setFeedPressureHigh(GaugePressure.of(9, "psi"));
        pressure("7 psi").meets().limitFromMaker();
        pressure("5 psi").fallsShort();
    }

    @Test
    void halfARangeIsNone() {
        record.getGeneratorSet().getMakerLimits().setFeedPressureLow(GaugePressure.of(6, "psi"));
        pressure("7 psi").cannotTell("generatorSet.makerLimits.feedPressureHigh");
    }

    @Test
    void norIsItsOtherHalf() {
        record.getGeneratorSet().getMakerLimits().setFeedPressureHigh(GaugePressure.of(9, "psi"));
        pressure("7 psi").cannotTell("generatorSet.makerLimits.feedPressureLow");
    }

    @Test
    void doesNotApplyToCarburettorOrDiesel() {
        record.getGeneratorSet().setFuelSystem(FuelSystem.CARBURETTOR);
        pressure("1 psi").doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setFuelSystem(FuelSystem.COMMON_RAIL);
        pressure("1 psi").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(FeedPressure.check(), record).cannotTell("fuelSupply.feedPressure");
    }
}
