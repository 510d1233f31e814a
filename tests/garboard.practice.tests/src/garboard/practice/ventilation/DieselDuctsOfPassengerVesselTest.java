// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Length;

class DieselDuctsOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSmallPassengerVesselOnDiesel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        Compartments.addDuct(record, DuctFunction.NATURAL_SUPPLY);
        Compartments.addDuct(record, DuctFunction.NATURAL_EXHAUST);
    }

    private Judged ducts(String beam, String supply, String exhaust) {
        record.getVessel().setBeam(Length.valueOf(beam));
        record.getVentilation().setSupplyAreaTotal(Area.valueOf(supply));
        record.getVentilation().setExhaustAreaTotal(Area.valueOf(exhaust));
        return judge(DieselDuctsOfPassengerVessel.check(), record);
    }

    @Test
    void oneSquareInchForEachFootOfBeam() {
        // 46 CFR 182.465, from memory: beam 14 ft, 14.0 in2 inlet and 14.0 in2 outlet
        ducts("14 ft", "14 in2", "14 in2").meets();
        ducts("14 ft", "13.9 in2", "20 in2").fallsShort().limit(14, "in2", 1e-6).afterRemedy().meets();
        ducts("14 ft", "20 in2", "13.9 in2").fallsShort();
    }

    @Test
    void metricBeam() {
        // the same: 4.2 m by the inch rule 8890 mm2 (13.8 in2)
        ducts("4.2 m", "88 cm2", "100 cm2").fallsShort().limit(8890, "mm2", 0.5);
        ducts("4.2 m", "89 cm2", "100 cm2").meets();
    }

    @Test
    void oneDuctIsTooFew() {
        record.getVentilation().getDucts().removeLast();
        ducts("14 ft", "20 in2", "20 in2").fallsShort();
    }

    @Test
    void doesNotApplyToOthers() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        ducts("14 ft", "1 in2", "1 in2").doesNotApply();
        record.getVessel().setService(VesselService.RECREATIONAL);
        ducts("14 ft", "1 in2", "1 in2").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheBeam() {
        ducts("14 ft", "20 in2", "20 in2");
        record.getVessel().setBeam(null);
        judge(DieselDuctsOfPassengerVessel.check(), record).cannotTell("vessel.beam");
    }
}
