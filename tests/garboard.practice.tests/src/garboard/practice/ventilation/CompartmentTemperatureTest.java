// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Temperature;

class CompartmentTemperatureTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged reading(String temperature) {
        record.getVentilation().setCompartmentTemperature(Temperature.valueOf(temperature));
        return judge(CompartmentTemperature.check(), record);
    }

    @Test
    void limitIsThatOfCommonPractice() {
        // common practice: 50 degC (122 degF)
        reading("50 degC").meets();
        reading("50.1 degC").fallsShort().limit(50, "degC", 1e-9);
        reading("122 degF").meets();
        reading("123 degF").fallsShort();
    }

    @Test
    void readingOnACoolDayIsCarriedOver() {
        record.getVentilation().setOutsideTemperature(Temperature.of(20, "degC"));
        record.getVentilation().setDesignAmbient(Temperature.of(35, "degC"));
        // the rise stays: 15 K more on the hottest day
        reading("35 degC").meets().measured(50, "degC", 1e-9);
        reading("36 degC").fallsShort();
        reading("34 degC ±2 degC").is(Standing.BORDERLINE);
    }

    @Test
    void makersTemperatureReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumCompartmentTemperature(Temperature.of(60, "degC"));
        reading("59 degC").meets().limitFromMaker();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(CompartmentTemperature.check(), record).cannotTell("ventilation.compartmentTemperature");
    }
}
