// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class FuelLiftTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged lift(String pump, String bottom) {
        record.getFuelSupply().getPumpPosition().setZ(Length.valueOf(pump));
        record.getFuelSupply().getTank().setBottomHeight(Length.valueOf(bottom));
        return judge(FuelLift.check(), record);
    }

    @Test
    void oneMetreTwentyIsTheLimit() {
        // common practice: 0.9 to 1.2 m (3 to 4 ft) to the lift pump
        lift("0.8 m", "-400 mm").meets().measured(1.2, "m", 1e-9);
        lift("0.81 m", "-400 mm").fallsShort().limit(1.2, "m", 1e-9);
        lift("3 ft", "0 m").meets();
    }

    @Test
    void theTapeIsCarriedOver() {
        // recomputed: two heights, each to 10 mm, make a lift to 14 mm
        Judged close = lift("0.79 m ±10 mm", "-400 mm ±10 mm").borderline().measured(1.19, "m", 1e-9);
        assertThat(close.verdict().remedy().orElseThrow().text()).contains("by at least 10 mm"); // 1.204 m may be
        lift("0.78 m ±10 mm", "-400 mm ±10 mm").meets();
        lift("0.79 m ±5 mm", "-400 mm").meets();
    }

    @Test
    void pumpBelowTheTankMeets() {
        lift("-0.2 m", "0.3 m").meets();
    }

    @Test
    void makersLiftReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumFuelLift(Length.of(0.9));
        lift("1.0 m", "0 m").fallsShort().limitFromMaker();
        record.getGeneratorSet().getMakerLimits().setMaximumFuelLift(Length.of(2));
        lift("1.8 m", "0 m").meets();
    }

    @Test
    void remedySaysHowMuchLower() {
        assertThat(lift("1.5 m", "0 m").fallsShort().verdict().remedy().orElseThrow().text()).contains("300 mm");
    }

    @Test
    void cannotTellWithoutTheHeights() {
        judge(FuelLift.check(), record).cannotTell("fuelSupply.pumpPosition.z", "fuelSupply.tank.bottomHeight");
    }
}
