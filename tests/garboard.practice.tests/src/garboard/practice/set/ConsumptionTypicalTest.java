// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Aspiration;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.quantity.SpecificConsumption;

class ConsumptionTypicalTest {

    private final CommissioningRecord record = Installation.empty();

    // typical small engines, from memory: diesel 230 to 290, turbocharged 205 to 240, gasoline 300 to 420 g/kWh
    @ParameterizedTest
    @CsvSource({ "DIESEL, NATURALLY_ASPIRATED, 230 g/kWh, MEETS", "DIESEL, NATURALLY_ASPIRATED, 290 g/kWh, MEETS",
        "DIESEL, NATURALLY_ASPIRATED, 229 g/kWh, FALLS_SHORT", "DIESEL, NOT_ENTERED, 291 g/kWh, FALLS_SHORT",
        "DIESEL, TURBOCHARGED, 205 g/kWh, MEETS", "DIESEL, TURBOCHARGED_CHARGE_AIR_COOLED, 241 g/kWh, FALLS_SHORT",
        "GASOLINE, NOT_ENTERED, 420 g/kWh, MEETS", "GASOLINE, NOT_ENTERED, 421 g/kWh, FALLS_SHORT" })
    void withinTheRange(FuelKind fuel, Aspiration aspiration, String specific, Standing standing) {
        record.getGeneratorSet().setFuel(fuel);
        record.getGeneratorSet().setAspiration(aspiration);
        record.getGeneratorSet().setSpecificFuelConsumption(SpecificConsumption.valueOf(specific));
        judge(ConsumptionTypical.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutBoth() {
        judge(ConsumptionTypical.check(), record).cannotTell("generatorSet.specificFuelConsumption", "generatorSet.fuel");
    }
}
