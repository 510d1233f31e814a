// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__IGNITION_PROTECTED_COMPONENTS;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class IgnitionProtectionOfPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 182.410(a)
        Question.of(IgnitionProtectionOfPassengerVessel.check(), VENTILATION__IGNITION_PROTECTED_COMPONENTS).at(CommissioningRecord::getVentilation)
            .in(record -> {
                record.getVessel().setService(VesselService.SMALL_PASSENGER);
                record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
            }).demands(Answer.YES, "ventilation.ignitionProtectedComponents");
    }

    @Test
    void doesNotApplyToDieselOrOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(IgnitionProtectionOfPassengerVessel.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(IgnitionProtectionOfPassengerVessel.check(), record).doesNotApply();
    }
}
