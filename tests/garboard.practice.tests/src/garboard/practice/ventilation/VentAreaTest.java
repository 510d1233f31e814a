// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Power;

class VentAreaTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged vents(String power, String area) {
        record.getGeneratorSet().setShaftPower(Power.valueOf(power));
        record.getVentilation().setSupplyAreaTotal(Area.valueOf(area));
        return judge(VentArea.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"30 hp, 9.1, 0.05", "650 hp, 197, 0.5"})
    void squareInchesByHorsepower(String power, double squareInches, double half) {
        // Gerr ch. 16: in2 = hp / 3.3; printed 650 hp: 197 in2
        vents(power, "1 in2").fallsShort().limit(squareInches, "in2", half);
    }

    @Test
    void metricPower() {
        // Gerr's inch rule: 22.47 kW are 30.13 hp, 9.131 in2, 58.9 cm2; 2.6 cm2 for each kW are 58.4
        vents("22.47 kW", "58 cm2").fallsShort().limit(58.9, "cm2", 0.05).afterRemedy().meets();
        vents("22.47 kW", "59 cm2").meets();
    }

    @Test
    void makersAreaReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMinimumVentilationArea(Area.of(200, "cm2"));
        vents("22.47 kW", "100 cm2").fallsShort().limitFromMaker();
        vents("22.47 kW", "200 cm2").meets();
    }

    @Test
    void cannotTellWithoutThePower() {
        record.getVentilation().setSupplyAreaTotal(Area.of(59, "cm2"));
        judge(VentArea.check(), record).cannotTell("generatorSet.shaftPower");
    }
}
