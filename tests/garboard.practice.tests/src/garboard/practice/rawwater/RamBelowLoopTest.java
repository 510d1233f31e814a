// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.StrainerPickUp;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.Speed;

class RamBelowLoopTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aScoopThatFacesForward() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.SCOOP_FACING_FORWARD);
    }

    private Judged ram(String speed, String loop) {
        record.getVessel().setSpeed(Speed.valueOf(speed));
        record.getRawWater().getSiphonBreak().getVentSeat().setZ(Length.valueOf(loop));
        return judge(RamBelowLoop.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"6 kn, 0.486", "8 kn, 0.864", "10 kn, 1.349", "20 kn, 5.397"})
    void limitIsTheRamHead(String speed, double head) {
        // recomputed from V2/2g with g = 9.80665 m/s2
        ram(speed, "0.1 m").fallsShort().limit(head, "m", 0.0005);
    }

    @Test
    void usualLoopIsBeatenBelowSixKnots() {
        // recomputed from V2/2g: 0.45 m are reached at 5.77 kn
        ram("5.7 kn", "450 mm").meets();
        var verdict = ram("6 kn", "450 mm").fallsShort().verdict();
        assertThat(verdict.remedy().orElseThrow().text()).contains("5.77 kn");
    }

    @Test
    void loopExactlyAsHighAsTheRamFallsShort() {
        // at rest the ram is 0, and a loop at the waterline is no loop
        ram("0 kn", "0 mm").fallsShort();
    }

    @Test
    void doesNotApplyToOtherIntakes() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.FLUSH);
        ram("20 kn", "100 mm").doesNotApply();
    }

    @Test
    void cannotTellWithoutSpeedAndLoop() {
        judge(RamBelowLoop.check(), record).cannotTell("vessel.speed", "rawWater.siphonBreak.ventSeat.z");
    }
}
