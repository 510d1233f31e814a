// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;

class CompartmentRiseTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged temperatures(String inside, String outside) {
        record.getVentilation().setCompartmentTemperature(Temperature.valueOf(inside));
        record.getVentilation().setOutsideTemperature(Temperature.valueOf(outside));
        return judge(CompartmentRise.check(), record);
    }

    @Test
    void sixteenKelvinAreTheLimit() {
        // Marine Diesel Basics 1: 16 K (30 degF)
        temperatures("36 degC", "20 degC").meets().measured(16, "K", 1e-9);
        temperatures("36.1 degC", "20 degC").fallsShort().limit(16, "K", 1e-9);
        temperatures("96 degF", "68 degF").meets();
        temperatures("97 degF", "68 degF").fallsShort();
    }

    @Test
    void accuraciesOfBothReadingsAddUp() {
        temperatures("35 degC ±1 degC", "20 degC ±0.5 degC").is(Standing.BORDERLINE);
        temperatures("34 degC ±1 degC", "20 degC ±0.5 degC").meets();
    }

    @Test
    void makersRiseReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumCompartmentRise(TemperatureDifference.of(10));
        temperatures("31 degC", "20 degC").fallsShort().limitFromMaker();
    }

    @Test
    void cannotTellWithoutBothReadings() {
        judge(CompartmentRise.check(), record).cannotTell("ventilation.compartmentTemperature", "ventilation.outsideTemperature");
    }
}
