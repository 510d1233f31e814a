// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.StrainerPickUp;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Speed;

class InletPressureAtPumpTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aScoopThatFacesForward() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.SCOOP_FACING_FORWARD);
    }

    private Judged pressure(String speed, String pumpHeight) {
        record.getVessel().setSpeed(Speed.valueOf(speed));
        record.getRawWater().getPump().getPosition().setZ(Length.valueOf(pumpHeight));
        return judge(InletPressureAtPump.check(), record);
    }

    @Test
    void fivePoundsAreReachedNearSixteenKnots() {
        // recomputed from rho V2/2, 1025 kg/m3: 8 kn 8.68 kPa, 20 kn 54.3 kPa, 34.5 kPa at 15.9 kn; limit common practice, 5 psi
        pressure("8 kn", "0 mm").meets().measured(8.68, "kPa", 0.005).limit(5, "psi", 1e-9);
        pressure("15.9 kn", "0 mm").meets();
        pressure("16 kn", "0 mm").fallsShort();
        pressure("20 kn", "0 mm").fallsShort().measured(54.3, "kPa", 0.05);
    }

    @Test
    void depthOfThePumpAdds() {
        // 1025 kg/m3 x 9.80665 m/s2 x 0.5 m = 5.03 kPa over the 8.68 kPa of 8 kn
        pressure("8 kn", "-500 mm").measured(13.71, "kPa", 0.01);
        pressure("8 kn", "500 mm").measured(3.66, "kPa", 0.01);
    }

    @Test
    void makersPressureReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumRawWaterInletPressure(GaugePressure.of(1, "psi"));
        pressure("8 kn", "0 mm").fallsShort().limitFromMaker();
    }

    @Test
    void doesNotApplyToOtherIntakes() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.ROUND_NON_DIRECTIONAL);
        pressure("20 kn", "0 mm").doesNotApply();
    }

    @Test
    void cannotTellWithoutThePump() {
        record.getVessel().setSpeed(Speed.valueOf("8 kn"));
        judge(InletPressureAtPump.check(), record).cannotTell("rawWater.pump.position.z");
    }
}
