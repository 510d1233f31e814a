// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class SuctionHoseClampsTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.addSuction(record);

    private Judged clamps(int count) {
        hose.setClampsPerEnd(count);
        return judge(SuctionHoseClamps.check(), record);
    }

    @Test
    void twoAreWanted() {
        // Gerr: two clamps on each end below the waterline
        clamps(1).fallsShort().afterRemedy().meets();
        clamps(2).meets();
        clamps(0).fallsShort();
    }

    @Test
    void hosesBehindThePumpAreNotItsMatter() {
        hose.setSection(WaterSection.ENGINE_TO_INJECTION);
        assertThat(Judged.all(SuctionHoseClamps.check(), record)).isEmpty();
    }

    @Test
    void doesNotApplyToPipe() {
        hose.setKind(WaterHoseKind.RIGID_METAL_PIPE);
        judge(SuctionHoseClamps.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheCount() {
        judge(SuctionHoseClamps.check(), record).cannotTell("rawWater.hoses[hose-1].clampsPerEnd");
    }
}
