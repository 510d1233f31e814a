// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Temperature;

class OverboardTemperatureMeasuredTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged overboard(String temperature) {
        record.getRawWater().setMeasuredOverboardTemperature(Temperature.valueOf(temperature));
        return judge(OverboardTemperatureMeasured.check(), record);
    }

    @Test
    void sixtyDegreesIsTheLimit() {
        // common practice: 40 to 55 degC usual, look for the cause above 60 degC (140 degF)
        overboard("60.1 degC").fallsShort().limit(60, "degC", 1e-9);
        overboard("60 degC").meets();
        overboard("140 degF").meets();
        overboard("141 degF").fallsShort();
    }

    @Test
    void readingInColdWaterIsCarriedOverToTheWarmestSea() {
        record.getRawWater().setMeasuredInletTemperature(Temperature.of(15, "degC"));
        record.getRawWater().setDesignSeaTemperature(Temperature.of(32, "degC"));
        // conservation of energy: the rise of 29 K stays, 32 + 29 = 61 degC
        overboard("44 degC").fallsShort().measured(61, "degC", 1e-9);
        overboard("43 degC").meets().measured(60, "degC", 1e-9);
    }

    @Test
    void accuraciesOfBothReadingsAddUp() {
        record.getRawWater().setMeasuredInletTemperature(Temperature.valueOf("15 degC ±0.5 degC"));
        record.getRawWater().setDesignSeaTemperature(Temperature.of(32, "degC"));
        // 59 degC with 1 K each way reaches 60 degC, with 1.5 K passes it
        overboard("42 degC ±1 degC").is(Standing.BORDERLINE);
        overboard("40 degC ±1 degC").meets();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(OverboardTemperatureMeasured.check(), record).cannotTell("rawWater.measuredOverboardTemperature");
    }
}
