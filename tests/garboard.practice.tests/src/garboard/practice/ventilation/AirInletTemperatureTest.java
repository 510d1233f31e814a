// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Temperature;

class AirInletTemperatureTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged reading(String temperature) {
        record.getVentilation().setAirInletTemperature(Temperature.valueOf(temperature));
        return judge(AirInletTemperature.check(), record);
    }

    @Test
    void limitIsThatOfCommonPractice() {
        // common practice: 45 degC (113 degF)
        reading("45 degC").meets();
        reading("45.1 degC").fallsShort().limit(45, "degC", 1e-9);
        reading("113 degF").meets();
        reading("114 degF").fallsShort();
    }

    @Test
    void readingOnACoolDayIsCarriedOver() {
        record.getVentilation().setOutsideTemperature(Temperature.of(20, "degC"));
        record.getVentilation().setDesignAmbient(Temperature.of(35, "degC"));
        // the rise stays: 15 K more on the hottest day
        reading("30 degC").meets().measured(45, "degC", 1e-9);
        reading("31 degC").fallsShort();
        reading("29 degC ±2 degC").is(Standing.BORDERLINE);
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(AirInletTemperature.check(), record).cannotTell("ventilation.airInletTemperature");
    }
}
