// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.AirDuct;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.VolumeFlow;

class DuctVelocityOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final AirDuct duct = Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE);

    @BeforeEach
    void aSmallPassengerVesselOnGasoline() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
    }

    private Judged duct(String flow, String area) {
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.valueOf(flow));
        duct.setArea(Area.valueOf(area));
        return judge(DuctVelocityOfPassengerVessel.check(), record);
    }

    @Test
    void twoThousandFeetAMinute() {
        // 46 CFR 182.460(f), from memory: 2000 ft/min; 250 ft3/min need 18.0 in2, 100 ft3/min 7.2 in2
        duct("250 cfm", "17.9 in2").fallsShort().limit(18.0, "in2", 1e-6).afterRemedy().meets();
        duct("250 cfm", "18 in2").meets();
        duct("100 cfm", "7.1 in2").fallsShort().limit(7.2, "in2", 1e-6);
    }

    @Test
    void severalDuctsAddUp() {
        Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE, "9 in2");
        duct("250 cfm", "9 in2").meets();
    }

    @Test
    void doesNotApplyToOthers() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        duct("250 cfm", "1 in2").doesNotApply();
        record.getVessel().setService(VesselService.RECREATIONAL);
        duct("250 cfm", "1 in2").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheArea() {
        judge(DuctVelocityOfPassengerVessel.check(), record).cannotTell("ventilation.blowerRatedFlow", "ventilation.ducts[duct-1].area");
    }
}
