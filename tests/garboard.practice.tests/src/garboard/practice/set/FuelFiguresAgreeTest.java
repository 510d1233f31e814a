// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.VolumeFlow;

class FuelFiguresAgreeTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged figures(FuelKind fuel, String shaft, String specific, String burn) {
        record.getGeneratorSet().setFuel(fuel);
        record.getGeneratorSet().setShaftPower(Power.valueOf(shaft));
        record.getGeneratorSet().setSpecificFuelConsumption(SpecificConsumption.valueOf(specific));
        record.getGeneratorSet().setFuelConsumptionFullLoad(VolumeFlow.valueOf(burn));
        return judge(FuelFiguresAgree.check(), record);
    }

    // recomputed: 22.47 kW x 250 g/kWh / 840 kg/m3 = 6.69 L/h; gasoline 8.125 kW x 360 g/kWh / 745 kg/m3 = 3.93 L/h; 10 % to each side
    @ParameterizedTest
    @CsvSource({ "DIESEL, 22.47 kW, 250 g/kWh, 6.69 L/h, MEETS", "DIESEL, 22.47 kW, 250 g/kWh, 1.77 gal/h, MEETS",
        "DIESEL, 22.47 kW, 250 g/kWh, 7.35 L/h, MEETS", "DIESEL, 22.47 kW, 250 g/kWh, 7.37 L/h, FALLS_SHORT",
        "DIESEL, 22.47 kW, 250 g/kWh, 6.0 L/h, FALLS_SHORT", "GASOLINE, 8.125 kW, 360 g/kWh, 3.93 L/h, MEETS",
        "GASOLINE, 8.125 kW, 360 g/kWh, 3.4 L/h, FALLS_SHORT" })
    void belongTogether(FuelKind fuel, String shaft, String specific, String burn, Standing standing) {
        figures(fuel, shaft, specific, burn).is(standing);
    }

    @Test
    void cannotTellWithoutAllFour() {
        judge(FuelFiguresAgree.check(), record).cannotTell("generatorSet.fuelConsumptionFullLoad", "generatorSet.shaftPower",
            "generatorSet.specificFuelConsumption", "generatorSet.fuel");
    }
}
