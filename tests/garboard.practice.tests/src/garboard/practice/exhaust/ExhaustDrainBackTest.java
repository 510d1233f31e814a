// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.addDrainingBack;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.model.MufflerKind;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

class ExhaustDrainBackTest {

    private static CommissioningRecord drains(String bore, String length, String usable) {
        CommissioningRecord record = liftMuffler();
        addDrainingBack(record, bore, length);
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf(usable));
        return record;
    }

    // (draining + residue) / usable with pi/4 D2 L, derived and recomputed independently; limit 80 % and residue 25 %: common practice
    @ParameterizedTest
    @CsvSource({ "50.8 mm, 1.6 m, 8 L, 65.5, MEETS", "2 in, 1.6 m, 8 L, 65.5, MEETS", "76.2 mm, 2.4 m, 14 L, 103.2, FALLS_SHORT" })
    void addsWhatDrainsBackToTheResidue(String bore, String length, String usable, double filling, Standing expected) {
        judge(ExhaustDrainBack.check(), drains(bore, length, usable)).is(expected).measured(filling, "%", 0.05).limit(80, "%", 1e-9);
    }

    @Test
    void tellsTheVolumes() {
        // 50.8 mm over 1.6 m: 3.243 L; 38.1 mm over 1.2 m: 1.368 L; 76.2 mm over 2.4 m: 10.945 L
        assertThat(judge(ExhaustDrainBack.check(), drains("50.8 mm", "1.6 m", "8 L")).verdict().sentence()).contains("3.24 L");
        assertThat(judge(ExhaustDrainBack.check(), drains("38.1 mm", "1.2 m", "8 L")).verdict().sentence()).contains("1.37 L");
        assertThat(judge(ExhaustDrainBack.check(), drains("76.2 mm", "2.4 m", "14 L")).verdict().sentence()).contains("10.9 L");
    }

    @Test
    void countsEveryPartThatSlopesBackAndNoOther() {
        CommissioningRecord record = drains("50.8 mm", "0.8 m", "8 L");
        addDrainingBack(record, "50.8 mm", "0.8 m");
        add(record, ExhaustSection.CREST_TO_OUTLET, "76.2 mm", "5 m").setSlopesBackToMuffler(Answer.NO);
        judge(ExhaustDrainBack.check(), record).meets().measured(65.5, "%", 0.05);
    }

    @Test
    void theMufflersOwnResidueTakesThePlaceOfTheUsualOne() {
        CommissioningRecord record = drains("50.8 mm", "1.6 m", "8 L");
        exhaust(record).getMuffler().setResidueFraction(Ratio.valueOf("45 %"));
        // 3.243 / 8 = 40.5 %
        judge(ExhaustDrainBack.check(), record).fallsShort().measured(85.5, "%", 0.05);
    }

    @Test
    void meetsExactlyAtTheLimit() {
        CommissioningRecord record = drains("50.8 mm", "1.6 m", "8 L");
        exhaust(record).getSections().getFirst().setSlopesBackToMuffler(Answer.NO);
        exhaust(record).getMuffler().setResidueFraction(Ratio.valueOf("80 %"));
        judge(ExhaustDrainBack.check(), record).meets().measured(80, "%", 1e-9);
        exhaust(record).getMuffler().setResidueFraction(Ratio.valueOf("81 %"));
        judge(ExhaustDrainBack.check(), record).fallsShort();
    }

    @Test
    void theLargerMufflerMeets() {
        // 10.945 L / (0.80 - 0.25) = 19.90 L
        CommissioningRecord record = drains("76.2 mm", "2.4 m", "14 L");
        judge(ExhaustDrainBack.check(), record).fallsShort().afterRemedy().meets();
        assertThat(exhaust(record).getMuffler().getVolumeToInlet().in("L")).isEqualTo(19.9);
    }

    @Test
    void doesNotApplyWithoutALiftMuffler() {
        judge(ExhaustDrainBack.check(), muffler(MufflerKind.IN_LINE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutVolumeOrHoses() {
        judge(ExhaustDrainBack.check(), liftMuffler()).cannotTell("exhaust.muffler.volumeToInlet", "exhaust.sections.slopesBackToMuffler");
        CommissioningRecord record = drains("50.8 mm", "1.6 m", "8 L");
        exhaust(record).getSections().getFirst().setLength(null);
        judge(ExhaustDrainBack.check(), record).cannotTell("exhaust.sections[run-1].length");
        exhaust(record).getSections().getFirst().setSlopesBackToMuffler(Answer.UNANSWERED);
        judge(ExhaustDrainBack.check(), record).cannotTell("exhaust.sections[run-1].slopesBackToMuffler");
    }
}
