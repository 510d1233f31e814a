// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.ValveKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class SeacockInFloodingZoneTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged intake(String height, String waterline, ValveKind kind) {
        record.getRawWater().getPickUp().getPosition().setZ(Length.valueOf(height));
        record.getVessel().setWaterlineLength(Length.valueOf(waterline));
        record.getRawWater().getSeacock().setKind(kind);
        return judge(SeacockInFloodingZone.check(), record);
    }

    @Test
    void thirtyCentimetresGovernShortVessels() {
        // Gerr ch. 17: the larger of 0.30 m and a sixtieth of the waterline length; 15 m give 0.25 m
        intake("0.30 m", "15 m", ValveKind.NONE).fallsShort();
        intake("0.31 m", "15 m", ValveKind.NONE).meets();
    }

    @Test
    void aSixtiethGovernsLongOnes() {
        // the same: 21 m give 0.35 m
        intake("0.33 m", "21 m", ValveKind.NONE).fallsShort();
        intake("0.36 m", "21 m", ValveKind.NONE).meets();
    }

    @Test
    void valveMeets() {
        intake("-0.5 m", "15 m", ValveKind.FLANGED_SEACOCK).meets();
    }

    @Test
    void cannotTellWithoutTheWaterline() {
        judge(SeacockInFloodingZone.check(), record).cannotTell("rawWater.pickUp.position.z", "vessel.waterlineLength",
            "rawWater.seacock.kind");
    }
}
