// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.addDrainingBack;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.model.MufflerKind;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class ExhaustCrankingBudgetTest {

    private static CommissioningRecord pump(String ratedSpeed, String usable, String residue) {
        CommissioningRecord record = liftMuffler();
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf("28 L/min"));
        record.getGeneratorSet().setRatedSpeed(RotationalSpeed.valueOf(ratedSpeed));
        record.getGeneratorSet().setCrankingSpeed(RotationalSpeed.valueOf("250 r/min"));
        exhaust(record).getMuffler().setVolumeToInlet(Volume.valueOf(usable));
        exhaust(record).getMuffler().setResidueFraction(Ratio.valueOf(residue));
        add(record, ExhaustSection.CREST_TO_OUTLET).setSlopesBackToMuffler(Answer.NO);
        return record;
    }

    // 28 L/min at 1800 r/min cranks 3.889 L/min: 5 L free flood in 77.1 s, 2 L in 30.9 s; at 3000 r/min 5 L in 128.6 s: derived, recomputed
    // independently. Half may be used and 30 s are customary: common practice
    @ParameterizedTest
    @CsvSource({ "1800 r/min, 5 L, 77.1, MEETS", "1800 r/min, 2 L, 30.9, FALLS_SHORT", "3000 r/min, 5 L, 128.6, MEETS" })
    void halfTheTimeToFloodMayBeUsed(String ratedSpeed, String free, double timeToFlood, Standing expected) {
        judge(ExhaustCrankingBudget.check(), pump(ratedSpeed, free, "0 %")).is(expected).measured(timeToFlood / 2, "s", 0.025).limit(30, "s", 0);
    }

    @Test
    void whatDrainsBackAndWhatStaysTakesRoom() {
        // 8 L less 3.243 L less 2.0 L leave 2.757 L: 42.5 s
        CommissioningRecord record = pump("1800 r/min", "8 L", "25 %");
        addDrainingBack(record, "50.8 mm", "1.6 m");
        judge(ExhaustCrankingBudget.check(), record).fallsShort().measured(42.5 / 2, "s", 0.025).afterRemedy().meets();
    }

    @Test
    void aMufflerThatRunsOverByItselfHasNoTimeAtAll() {
        CommissioningRecord record = pump("1800 r/min", "3 L", "25 %");
        addDrainingBack(record, "50.8 mm", "1.6 m");
        judge(ExhaustCrankingBudget.check(), record).fallsShort().measured(0, "s", 0).afterRemedy().meets();
    }

    @Test
    void theMakersTotalTakesThePlaceOfThirtySeconds() {
        CommissioningRecord record = pump("1800 r/min", "2 L", "0 %");
        record.getGeneratorSet().getMakerLimits().setMaximumTotalCrankTime(TimeSpan.valueOf("15 s"));
        judge(ExhaustCrankingBudget.check(), record).meets().limitFromMaker();
    }

    @Test
    void doesNotApplyWithoutAMuffler() {
        judge(ExhaustCrankingBudget.check(), muffler(MufflerKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutPumpSpeedsAndVolumes() {
        judge(ExhaustCrankingBudget.check(), liftMuffler()).cannotTell("exhaust.muffler.volumeToInlet", "exhaust.sections.slopesBackToMuffler",
            "rawWater.pump.ratedFlow", "generatorSet.ratedSpeed", "generatorSet.crankingSpeed");
    }
}
