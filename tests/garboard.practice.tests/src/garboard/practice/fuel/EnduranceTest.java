// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Aspiration;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;

class EnduranceTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselSetOfTwentyKilowatts() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setAlternatorEfficiency(Ratio.of(0.89));
        record.getGeneratorSet().setSpecificFuelConsumption(SpecificConsumption.of(250, "g/kWh"));
        record.getFuelSupply().setPlannedLoadPower(Power.of(20, "kW"));
    }

    private Judged tank(String capacity, String planned) {
        record.getFuelSupply().getTank().setCapacity(Volume.valueOf(capacity));
        record.getFuelSupply().setPlannedRunTime(TimeSpan.valueOf(planned));
        return judge(Endurance.check(), record);
    }

    @Test
    void dieselTank() {
        // recomputed: 22.47 kW x 250 g/kWh / 840 kg/m3 = 6.69 L/h; 200 L x 0.9 last 26.9 h
        tank("200 L", "20 h").meets().measured(26.9, "h", 0.05).limit(24, "h", 1e-9);
        tank("200 L", "23 h").fallsShort().limit(27.6, "h", 1e-9);
    }

    @Test
    void gasolineTank() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setAlternatorEfficiency(Ratio.of(0.8));
        record.getGeneratorSet().setSpecificFuelConsumption(SpecificConsumption.of(360, "g/kWh"));
        record.getFuelSupply().setPlannedLoadPower(Power.of(6.5, "kW"));
        // recomputed: 8.125 kW x 360 g/kWh / 745 kg/m3 = 3.93 L/h; 75 L x 0.9 last 17.2 h
        tank("75 L", "10 h").meets().measured(17.2, "h", 0.05);
    }

    @Test
    void typicalConsumptionWhereTheMakersIsNotKnown() {
        record.getGeneratorSet().setSpecificFuelConsumption(null);
        // typical small diesel, from memory: 250 g/kWh, turbocharged 225 g/kWh: 26.9 h x 250/225
        assertThat(tank("200 L", "20 h").measured(26.9, "h", 0.05).verdict().sentence()).contains("typical consumption");
        record.getGeneratorSet().setAspiration(Aspiration.TURBOCHARGED);
        tank("200 L", "20 h").measured(29.9, "h", 0.05);
    }

    @Test
    void usablePartOfTheTank() {
        record.getFuelSupply().getTank().setUsableFraction(Ratio.of(0.5));
        // half of 200 L at 6.69 L/h
        tank("200 L", "10 h").meets().measured(14.95, "h", 0.01);
    }

    @Test
    void remedyIsALargerTank() {
        // 30 h x 1.2 x 6.688 L/h / 0.9 = 267.5 L, to the next 5 L
        tank("200 L", "30 h").fallsShort().afterRemedy().meets();
        assertThat(record.getFuelSupply().getTank().getCapacity()).isEqualTo(Volume.of(270, "L"));
    }

    @Test
    void cannotTellWithoutThePlan() {
        record.getFuelSupply().setPlannedLoadPower(null);
        judge(Endurance.check(), record).cannotTell("fuelSupply.tank.capacity", "fuelSupply.plannedRunTime",
            "fuelSupply.plannedLoadPower");
    }
}
