// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;

class NaturalOpeningsTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged openings(String... areas) {
        Compartments.gasoline(record, "50 ft3");
        record.getVentilation().getDucts().clear();
        for (String area : areas) {
            Compartments.addDuct(record, DuctFunction.NATURAL_EXHAUST, area);
        }
        return judge(NaturalOpenings.check(), record);
    }

    @Test
    void manySmallOpeningsFallShort() {
        // 33 CFR 183.630(e): V 50 ft3, supply 2 x 6.0, exhaust 4 x 2.9 in2: fails, each 2.9 in2 is not more than 3.0
        openings("2.9 in2", "2.9 in2", "2.9 in2", "2.9 in2").fallsShort().limit(3, "in2", 1e-9).afterRemedy().meets();
        openings("6.0 in2", "6.0 in2").meets();
    }

    @Test
    void exactlyThreeSquareInchesFallShort() {
        // 33 CFR 183.630(e): more than 3.0 in2
        openings("3.0 in2").fallsShort();
        openings("3.01 in2").meets();
        openings("19.4 cm2").meets();
        openings("1935.48 mm2").fallsShort();
    }

    @Test
    void blowerDuctsDoNotCount() {
        openings("4 in2");
        Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE, "1 in2");
        judge(NaturalOpenings.check(), record).meets();
    }

    @Test
    void doesNotApplyToDieselOrInTheOpen() {
        openings("1 in2");
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(750, "in2"));
        judge(NaturalOpenings.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(NaturalOpenings.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutDucts() {
        openings().cannotTell("ventilation.ducts.area");
    }
}
