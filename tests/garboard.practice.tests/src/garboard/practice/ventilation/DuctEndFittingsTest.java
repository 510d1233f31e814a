// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;

class DuctEndFittingsTest {

    private final CommissioningRecord record = Installation.empty();

    private AirDuct flexible(DuctFunction function, String area, String fitting) {
        AirDuct duct = Compartments.addDuct(record, function, area);
        duct.setFlexible(Answer.YES);
        duct.setEndFittingArea(Area.valueOf(fitting));
        return duct;
    }

    private Judged fitting(String volume, String area) {
        Compartments.gasoline(record, volume);
        record.getVentilation().getDucts().clear();
        flexible(DuctFunction.NATURAL_SUPPLY, "20 in2", area);
        return judge(DuctEndFittings.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"25 ft3, 6.4378", "50 ft3, 9.2103", "150 ft3, 13.6048"})
    void fourFifthsOfTheRequiredArea(String volume, double squareInches) {
        // 33 CFR 183.630(f): 80 % of the area required of the duct, not of the duct fitted
        fitting(volume, "1 in2").fallsShort().limit(squareInches, "in2", 0.00005).afterRemedy().meets();
    }

    @Test
    void exactlyFourFifthsMeet() {
        // 0.8 x 3.0 in2 for a compartment of 8 ft3
        fitting("8 ft3", "2.4 in2").meets();
        fitting("8 ft3", "2.39 in2").fallsShort();
    }

    @Test
    void twoDuctsShareTheRequiredArea() {
        Compartments.gasoline(record, "50 ft3");
        flexible(DuctFunction.NATURAL_EXHAUST, "8 in2", "4.7 in2");
        flexible(DuctFunction.NATURAL_EXHAUST, "8 in2", "4.6 in2");
        // each half of 11.5129 in2, and 80 % of that
        judge(DuctEndFittings.check(), record).fallsShort().limit(4.6052, "in2", 0.00005);
    }

    @Test
    void doesNotApplyToRigidDuctsOrDiesel() {
        Compartments.gasoline(record, "50 ft3");
        Compartments.addDuct(record, DuctFunction.NATURAL_SUPPLY, "20 in2").setFlexible(Answer.NO);
        judge(DuctEndFittings.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(DuctEndFittings.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheFitting() {
        Compartments.gasoline(record, "50 ft3");
        Compartments.addDuct(record, DuctFunction.NATURAL_SUPPLY, "20 in2").setFlexible(Answer.YES);
        judge(DuctEndFittings.check(), record).cannotTell("ventilation.ducts[duct-1].endFittingArea");
    }
}
