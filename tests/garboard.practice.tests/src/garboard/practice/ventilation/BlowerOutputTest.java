// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.VolumeFlow;

class BlowerOutputTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged output(String volume, String flow) {
        Compartments.gasoline(record, volume);
        record.getVentilation().setBlowerMeasuredFlow(VolumeFlow.valueOf(flow));
        return judge(BlowerOutput.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"20, 20", "33.9, 20", "34, 20.4", "60, 36", "100, 60", "150, 70", "290, 98", "319.7, 103.94"})
    void outputByVolume(double cubicFeet, double cfm) {
        // 33 CFR Table 183.610, Fo
        output(cubicFeet + " ft3", "1 ft3/min").fallsShort().limit(cfm, "ft3/min", 0.005);
    }

    @Test
    void exactlyTheTableMeets() {
        // 36 ft3/min are 61.16 m3/h
        output("60 ft3", "36 cfm").meets();
        output("60 ft3", "61.17 m3/h").meets();
        output("60 ft3", "61.1 m3/h").fallsShort();
    }

    @Test
    void uncertainReadingAtTheTableIsBorderline() {
        output("60 ft3", "37 cfm ±5 %").is(Standing.BORDERLINE);
    }

    @Test
    void doesNotApplyToDieselOrInTheOpen() {
        output("60 ft3", "1 cfm");
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(900, "in2"));
        judge(BlowerOutput.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowerOutput.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheReading() {
        Compartments.gasoline(record, "60 ft3");
        judge(BlowerOutput.check(), record).cannotTell("ventilation.blowerMeasuredFlow");
    }
}
