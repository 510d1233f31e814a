// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.addDrainingBack;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.quantity.Volume;

class ExhaustMufflerVolumeTest {

    private static CommissioningRecord drains(String bore, String length, String usable) {
        CommissioningRecord record = liftMuffler();
        addDrainingBack(record, bore, length);
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf(usable));
        return record;
    }

    @Test
    void asksForThreeTimesWhatDrainsBack() {
        // common practice; 3 x 3.243 L = 9.73 L, recomputed independently: the muffler that holds all that drains back fails this stricter rule
        judge(ExhaustMufflerVolume.check(), drains("50.8 mm", "1.6 m", "8 L")).fallsShort().limit(9.73, "L", 0.005).afterRemedy().meets()
            .measured(9.8, "L", 0);
        judge(ExhaustMufflerVolume.check(), drains("50.8 mm", "1.6 m", "9.73 L")).meets();
        judge(ExhaustMufflerVolume.check(), drains("50.8 mm", "1.6 m", "9.72 L")).fallsShort();
    }

    @Test
    void theMakersVolumeTakesItsPlaceAndNeedsNoHoses() {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf("8 L"));
        record.getGeneratorSet().getMakerLimits().setMinimumMufflerVolume(Volume.valueOf("2 gal"));
        judge(ExhaustMufflerVolume.check(), record).meets().limitFromMaker();
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf("7.5 L"));
        judge(ExhaustMufflerVolume.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutALiftMuffler() {
        judge(ExhaustMufflerVolume.check(), muffler(MufflerKind.STANDPIPE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutVolumeOrHoses() {
        judge(ExhaustMufflerVolume.check(), liftMuffler()).cannotTell("exhaust.muffler.volumeToInlet");
        CommissioningRecord record = liftMuffler();
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf("8 L"));
        judge(ExhaustMufflerVolume.check(), record).cannotTell("exhaust.sections.slopesBackToMuffler");
    }
}
