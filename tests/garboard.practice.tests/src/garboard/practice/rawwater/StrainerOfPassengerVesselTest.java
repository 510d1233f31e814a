// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.StrainerPickUp;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class StrainerOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setCooling(Cooling.HEAT_EXCHANGER);
    }

    private Judged pickUp(StrainerPickUp kind) {
        record.getRawWater().getPickUp().setKind(kind);
        return judge(StrainerOfPassengerVessel.check(), record);
    }

    @Test
    void strainerOutsideOrInsideMeets() {
        // 46 CFR 182.420(a)(2): a strainer in the raw-water intake
        pickUp(StrainerPickUp.ROUND_NON_DIRECTIONAL).meets();
        record.getRawWater().getStrainer().setPortBore(Length.of(25.4, "mm"));
        pickUp(StrainerPickUp.NONE).meets();
    }

    @Test
    void noneFallsShort() {
        pickUp(StrainerPickUp.NONE).fallsShort();
        record.getRawWater().setStrainer(null);
        pickUp(StrainerPickUp.NONE).fallsShort();
    }

    @Test
    void doesNotApplyToOtherVesselsOrKeelCooling() {
        record.getGeneratorSet().setCooling(Cooling.KEEL_COOLED);
        pickUp(StrainerPickUp.NONE).doesNotApply();
        record.getGeneratorSet().setCooling(Cooling.HEAT_EXCHANGER);
        record.getVessel().setService(VesselService.RECREATIONAL);
        pickUp(StrainerPickUp.NONE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(StrainerOfPassengerVessel.check(), record).cannotTell("rawWater.pickUp.kind");
    }
}
