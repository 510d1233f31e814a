// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

class FanCarriesTheHeatTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged fan(String flow) {
        record.getVentilation().setNaturalDraught(Answer.NO);
        record.getVentilation().setFanFlow(VolumeFlow.valueOf(flow));
        return judge(FanCarriesTheHeat.check(), record);
    }

    private void set(FuelKind fuel, String shaft, String output, double efficiency) {
        record.getGeneratorSet().setFuel(fuel);
        record.getGeneratorSet().setShaftPower(Power.valueOf(shaft));
        record.getGeneratorSet().setRatedPower(Power.valueOf(output));
        record.getGeneratorSet().setAlternatorEfficiency(Ratio.of(efficiency));
    }

    @Test
    void makersHeat() {
        // recomputed from V = Phi / (rho cp dT), 1.13 kg/m3, 1.01 kJ/(kg.K): 7.14 kW at 16 K are 23.5 m3/min
        record.getGeneratorSet().setHeatToCompartment(Power.of(7.14, "kW"));
        fan("23.4 m3/min").fallsShort().limit(23.46, "m3/min", 0.005);
        fan("23.5 m3/min").meets();
    }

    @Test
    void dieselByTypicalFigures() {
        // recomputed: 7 % of 66.64 kW and 20 kW (1/0.89 - 1) make 7.14 kW; at 16 K 23.4 m3/min (828 ft3/min)
        set(FuelKind.DIESEL, "22.472 kW", "20 kW", 0.89);
        assertThat(fan("1 m3/min").fallsShort().limit(23.4, "m3/min", 0.05).verdict().sentence()).contains("typical");
        fan("829 cfm").meets();
    }

    @Test
    void gasolineByTypicalFigures() {
        // recomputed: 2.45 kW and 1.63 kW make 4.07 kW; at 16 K 13.4 m3/min
        set(FuelKind.GASOLINE, "8.125 kW", "6.5 kW", 0.80);
        fan("13 m3/min").fallsShort().limit(13.4, "m3/min", 0.05).afterRemedy().meets();
    }

    @ParameterizedTest
    @CsvSource({"10, 37.5", "12.5, 30.0"})
    void makersRiseChangesTheFlow(double kelvin, double cubicMetresPerMinute) {
        // recomputed: the same 7.14 kW at 10 K 37.5 m3/min, at 12.5 K 30.0
        set(FuelKind.DIESEL, "22.472 kW", "20 kW", 0.89);
        record.getGeneratorSet().getMakerLimits().setMaximumCompartmentRise(TemperatureDifference.of(kelvin));
        fan("1 m3/min").fallsShort().limit(cubicMetresPerMinute, "m3/min", 0.05);
    }

    @Test
    void doesNotApplyToNaturalDraught() {
        fan("1 m3/min");
        record.getVentilation().setNaturalDraught(Answer.YES);
        judge(FanCarriesTheHeat.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutHeatOrFigures() {
        fan("10 m3/min").cannotTell("generatorSet.shaftPower", "generatorSet.ratedPower", "generatorSet.alternatorEfficiency", "generatorSet.fuel");
        record.getGeneratorSet().setHeatToCompartment(Power.of(7, "kW"));
        record.getVentilation().setFanFlow(null);
        judge(FanCarriesTheHeat.check(), record).cannotTell("ventilation.fanFlow");
    }
}
