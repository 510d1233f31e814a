// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;

class NaturalExhaustAreaTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged openings(String volume, String... areas) {
        Compartments.gasoline(record, volume);
        record.getVentilation().getDucts().clear();
        for (String area : areas) {
            Compartments.addDuct(record, DuctFunction.NATURAL_EXHAUST, area);
        }
        return judge(NaturalExhaustArea.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"5, 3.0", "8, 3.0", "20, 6.9315", "25, 8.0472", "50, 11.5129", "60, 12.4245", "150, 17.0060"})
    void areaByVolume(double cubicFeet, double squareInches) {
        // 33 CFR 183.630(d): A = 5 ln(V/5); below 9.11 ft3 the 3.0 in2 of 183.630(e) govern
        openings(cubicFeet + " ft3", "1 in2").fallsShort().limit(squareInches, "in2", 0.00005);
    }

    @Test
    void openingsAddUp() {
        openings("50 ft3", "6.0 in2", "6.0 in2").meets().measured(12, "in2", 1e-9);
        openings("50 ft3", "6.0 in2", "5.0 in2").fallsShort();
        // 11.5129 in2 are 7427.7 mm2
        openings("50 ft3", "7428 mm2").meets();
        openings("50 ft3", "7427 mm2").fallsShort();
    }

    @Test
    void remedyEnlargesTheFirst() {
        openings("50 ft3", "4 in2", "5 in2").afterRemedy().meets();
        // 11.5129 - 5 in2, to the next tenth
        assertThat(record.getVentilation().getDucts().getFirst().getArea()).isEqualTo(Area.of(6.6, "in2"));
    }

    @Test
    void doesNotApplyToDieselOrInTheOpen() {
        openings("50 ft3", "1 in2");
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(750, "in2"));
        judge(NaturalExhaustArea.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(NaturalExhaustArea.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutADuctOfThisDirection() {
        openings("50 ft3");
        Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE, "20 in2");
        judge(NaturalExhaustArea.check(), record).cannotTell("ventilation.ducts.area");
    }
}
