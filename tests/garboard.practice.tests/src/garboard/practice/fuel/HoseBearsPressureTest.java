// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

class HoseBearsPressureTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    private Judged hose(String bore, String pressure) {
        line.setKind(FuelLineKind.HOSE_ISO_7840);
        line.setBore(Length.valueOf(bore));
        line.setWorkingPressure(GaugePressure.valueOf(pressure));
        return judge(HoseBearsPressure.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"8 mm, 38 psi, MEETS", "10 mm, 42 psi, MEETS", "8 mm, 45 psi, MEETS", "8 mm, 50 psi, FALLS_SHORT",
        "8 mm, 60 psi, FALLS_SHORT", "12 mm, 38 psi, FALLS_SHORT", "12 mm, 36 psi, MEETS",
        "10 mm, 0.34 MPa, MEETS", "3/8 in, 340 kPa, MEETS", "63 mm, 0.25 MPa, MEETS"})
    void ratingByBore(String bore, String pressure, Standing standing) {
        // ISO 7840:2021, scope: 0.34 MPa (49.3 psi) to 10 mm bore, 0.25 MPa (36.3 psi) to 63 mm
        hose(bore, pressure).is(standing);
    }

    @Test
    void fortyFivePsiLeavesNinePerCent() {
        // 340 - 310.3 kPa, which is 9 % of 340 kPa
        assertThat(hose("8 mm", "45 psi").verdict().margin().orElseThrow().distance().in("kPa")).isCloseTo(29.7, within(0.05));
    }

    @Test
    void doesNotApplyToOtherHoseOrWiderBore() {
        hose("70 mm", "1 psi").doesNotApply();
        hose("8 mm", "60 psi");
        line.setKind(FuelLineKind.INJECTION_HOSE);
        judge(HoseBearsPressure.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToVentAndFill() {
        hose("38 mm", "60 psi");
        line.setFunction(FuelLineFunction.VENT);
        judge(HoseBearsPressure.check(), record).doesNotApply();
        line.setFunction(FuelLineFunction.FILL);
        judge(HoseBearsPressure.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutThePressure() {
        line.setKind(FuelLineKind.HOSE_ISO_8469);
        line.setBore(Length.of(8, "mm"));
        judge(HoseBearsPressure.check(), record).cannotTell("fuelSupply.lines[line-1].workingPressure");
    }
}
