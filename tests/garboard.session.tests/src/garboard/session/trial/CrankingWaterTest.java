// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static garboard.session.trial.TrialRecords.tried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.checks.Evaluator;
import garboard.checks.Verdict;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SeacockState;
import garboard.practice.HandbookPractice;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.session.trial.CrankingWater.Level;

class CrankingWaterTest {

    private final CommissioningRecord record = TrialRecords.withMuffler();

    @Test
    void reckonsTheWaterFromThePumpAndTheTime() {
        tried(record, "10 s", SeacockState.OPEN);

        CrankingWater water = CrankingWater.of(record);

        // recomputed from Q n_crank / n_rated: 28 L/min * 250 / 1800 = 3.889 L/min, in 10 s 0.648 L
        assertThat(water.room().flow().orElseThrow().in("L/min")).isCloseTo(3.889, within(0.0005));
        assertThat(water.collected().orElseThrow().in("L")).isCloseTo(0.648, within(0.0005));
        // recomputed from pi/4 D^2 L = 3.243 L and a quarter of 8 L: 5.243 L stand in it, 2.757 L are free, full in 42.5 s
        assertThat(water.room().standing().orElseThrow().in("L")).isCloseTo(5.243, within(0.0005));
        assertThat(water.room().free().orElseThrow().in("L")).isCloseTo(2.757, within(0.0005));
        assertThat(water.timeToFlood().orElseThrow().in("s")).isCloseTo(42.5, within(0.05));
        // half of 42.5 s
        assertThat(water.allowed().in("s")).isCloseTo(21.3, within(0.05));
        assertThat(water.muffler()).isTrue();
        assertThat(water.left().in("s")).isCloseTo(11.3, within(0.05));
        // (5.243 L + 0.648 L) / 8 L
        assertThat(water.filling().orElseThrow().in("%")).isCloseTo(73.6, within(0.05));
    }

    @Test
    void warnsBeforeTheSeacockMustBeShutAndWhenTheMufflerCanBeFull() {
        assertThat(CrankingWater.of(record).level()).isEqualTo(Level.CALM);
        tried(record, "11 s", SeacockState.OPEN);
        assertThat(CrankingWater.of(record).level()).as("10.3 s left, a full try takes 10 s").isEqualTo(Level.CALM);
        tried(record, "1 s", SeacockState.OPEN);
        assertThat(CrankingWater.of(record).level()).as("9.3 s left").isEqualTo(Level.NEAR);
        tried(record, "9.5 s", SeacockState.OPEN);
        assertThat(CrankingWater.of(record).level()).as("21.5 s of 21.3 s").isEqualTo(Level.SHUT);
        tried(record, "20 s", SeacockState.OPEN);
        assertThat(CrankingWater.of(record).level()).as("41.5 s of 42.5 s").isEqualTo(Level.SHUT);
        tried(record, "1.2 s", SeacockState.OPEN);
        assertThat(CrankingWater.of(record).level()).as("42.7 s of 42.5 s").isEqualTo(Level.FULL);
    }

    @Test
    void beginsAnewWhenItFiresOrTheMufflerIsDrained() {
        tried(record, "8 s", SeacockState.OPEN).setFired(Answer.YES);
        assertThat(CrankingWater.of(record).cranked().si()).isZero();
        tried(record, "7 s", SeacockState.OPEN).setMufflerDrained(Answer.YES);
        tried(record, "5 s", SeacockState.OPEN);

        assertThat(CrankingWater.of(record).cranked().in("s")).isEqualTo(5);
        assertThat(CrankingWater.of(record).tries()).isEqualTo(1);
    }

    @Test
    void leavesOutTriesWithTheSeacockShutAndCountsThoseThatDoNotTell() {
        tried(record, "8 s", SeacockState.SHUT);
        tried(record, "7 s", SeacockState.NOT_ENTERED);
        tried(record, "5 s", SeacockState.OPEN).setDuration(null);

        CrankingWater water = CrankingWater.of(record);

        assertThat(water.cranked().in("s")).isEqualTo(7);
        assertThat(water.untold()).isEqualTo(1);
        assertThat(water.untimed()).isEqualTo(1);
        assertThat(water.tries()).isEqualTo(2);
    }

    @Test
    void goesByTheMakersTotalWhereTheMufflerHoldsMore() {
        record.getGeneratorSet().setMakerLimits(TrialRecords.MAKE.createMakerLimits());
        record.getGeneratorSet().getMakerLimits().setMaximumTotalCrankTime(TimeSpan.valueOf("15 s"));
        record.getGeneratorSet().getMakerLimits().setMaximumCrankTime(TimeSpan.valueOf("6 s"));

        CrankingWater water = CrankingWater.of(record);

        assertThat(water.allowed().in("s")).isEqualTo(15);
        assertThat(water.muffler()).isFalse();
        assertThat(water.limits().attemptByMaker()).isTrue();
        assertThat(water.limits().attempt()).isEqualTo(TimeSpan.valueOf("6 s"));
    }

    @Test
    void countsSecondsAgainstThirtyWhileTheMufflerIsNotKnown() {
        CommissioningRecord bare = TrialRecords.withTrial();
        tried(bare, "8 s", SeacockState.OPEN);

        CrankingWater water = CrankingWater.of(bare);

        assertThat(water.collected()).isEmpty();
        assertThat(water.allowed().in("s")).as("common practice: 30 s in all").isEqualTo(30);
        assertThat(water.left().in("s")).isEqualTo(22);
        assertThat(water.room().missing()).containsExactly("rawWater.pump.ratedFlow", "generatorSet.ratedSpeed", "generatorSet.crankingSpeed",
            "exhaust.muffler.volumeToInlet", "exhaust.sections");
    }

    @Test
    void namesTheHoseThatDoesNotSayWhetherItSlopesBack() {
        record.getExhaust().getSections().getFirst().setSlopesBackToMuffler(Answer.UNANSWERED);

        assertThat(CrankingWater.of(record).room().missing()).containsExactly("exhaust.sections[0].slopesBackToMuffler");
        assertThat(CrankingWater.of(record).room().free()).isEmpty();
        assertThat(CrankingWater.of(record).room().flow()).isPresent();
    }

    @Test
    void saysWhatIsWrongInsteadOfBreaking() {
        record.getGeneratorSet().setCrankingSpeed(RotationalSpeed.valueOf("2500 r/min"));

        CrankingWater water = CrankingWater.of(record);

        assertThat(water.room().wrong()).hasValueSatisfying(words -> assertThat(words).contains("cranking speed", "2500 r/min"));
        assertThat(water.collected()).isEmpty();
        assertThat(water.allowed().in("s")).isEqualTo(30);
    }

    @Test
    void takesAMufflerThatRunsOverByItselfForFull() {
        record.getExhaust().getSections().getFirst().setLength(garboard.quantity.Length.valueOf("6 m"));

        CrankingWater water = CrankingWater.of(record);

        assertThat(water.room().free().orElseThrow().si()).isZero();
        assertThat(water.level()).isEqualTo(Level.FULL);
    }

    @Test
    void agreesWithTheCheckOfTheTrial() {
        tried(record, "9 s", SeacockState.OPEN);
        tried(record, "8 s", SeacockState.OPEN);

        CrankingWater water = CrankingWater.of(record);
        Verdict verdict = new Evaluator(Catalogue.of(new HandbookPractice())).evaluate(record, LocalDate.of(2026, 5, 1)).verdicts().stream()
            .filter(found -> found.check().id().equals("EXHAUST-CRANKING-TOTAL")).findFirst().orElseThrow();

        assertThat(verdict.measured().orElseThrow().si()).isEqualTo(water.cranked().si());
        assertThat(verdict.limit().orElseThrow().value().si()).isCloseTo(water.allowed().si(), within(1e-9));
    }
}
