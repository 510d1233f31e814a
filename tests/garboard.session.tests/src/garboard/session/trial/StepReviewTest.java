// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static garboard.session.trial.TrialRecords.coolant;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.LoadStep;
import garboard.quantity.TimeSpan;
import garboard.session.trial.StepReview.Lack;

class StepReviewTest {

    private final CommissioningRecord record = TrialRecords.withTrial();

    @Test
    void asksOfAnEmptyStepForEverything() {
        assertThat(StepReview.of(TrialRecords.MAKE.createLoadStep()).lacks()).containsExactly(Lack.LOAD, Lack.READINGS, Lack.DWELL);
    }

    @Test
    void isContentWithAStepHeldLongEnoughAndStandingStill() {
        LoadStep step = TrialRecords.step(record, "50 %");
        step.setDwell(TimeSpan.valueOf("30 min"));
        coolant(step, 0, "81.8 degC");
        coolant(step, 5, "82.4 degC");
        coolant(step, 10, "82.6 degC");
        coolant(step, 15, "82.6 degC");

        StepReview review = StepReview.of(step);

        assertThat(review.complete()).isTrue();
        // recomputed by least squares over the last ten minutes, 82.4, 82.6, 82.6 degC: 0.02 K/min, 0.2 K
        assertThat(Settling.of(step).getFirst().change().orElseThrow().in("K")).isCloseTo(0.2, within(0.0005));
    }

    @Test
    void drawsTheLineThroughThreeReadingsThatAreFurtherApart() {
        LoadStep step = TrialRecords.step(record, "100 %");
        coolant(step, 0, "70 degC");
        coolant(step, 20, "78 degC");
        coolant(step, 40, "82 degC");

        // recomputed by least squares: (82 - 70) K in 40 min, in 10 min 3.0 K
        assertThat(Settling.of(step).getFirst().change().orElseThrow().in("K")).isCloseTo(3.0, within(0.0005));
        assertThat(StepReview.of(step).lacks()).contains(Lack.NOT_SETTLED);
    }

    @Test
    void cannotTellWhetherItSettledFromTwoReadingsOrFromFiveMinutes() {
        LoadStep two = TrialRecords.step(record, "100 %");
        coolant(two, 0, "70 degC");
        coolant(two, 15, "70 degC");
        assertThat(StepReview.of(two).lacks()).contains(Lack.SETTLING_UNKNOWN, Lack.FEW_READINGS);

        LoadStep five = TrialRecords.step(record, "105 %");
        coolant(five, 0, "70 degC");
        coolant(five, 2, "70 degC");
        coolant(five, 5, "70 degC");
        assertThat(StepReview.of(five).lacks()).contains(Lack.SETTLING_UNKNOWN).doesNotContain(Lack.FEW_READINGS);
    }

    @Test
    void wantsNoSteadyStateBelowFullLoad() {
        LoadStep step = TrialRecords.step(record, "25 %");
        step.setDwell(TimeSpan.valueOf("15 min"));
        coolant(step, 0, "40 degC");
        coolant(step, 10, "55 degC");
        coolant(step, 15, "60 degC");

        assertThat(StepReview.of(step).complete()).isTrue();
        assertThat(StepReview.of(step).unsettled()).hasSize(1);
    }

    @Test
    void doesNotMindTheOrderOfEntryNorTwoReadingsAtOneTime() {
        LoadStep step = TrialRecords.step(record, "25 %");
        coolant(step, 10, "75 degC");
        coolant(step, 0, "70 degC");
        coolant(step, 5, "99 degC");
        coolant(step, 5, "72.5 degC");

        // (75 - 70) K in 10 min; of the two at five minutes the later entry counts
        assertThat(Settling.of(step).getFirst().change().orElseThrow().in("K")).isCloseTo(5.0, within(0.0005));
    }

    @Test
    void countsReadingsWithoutTimeOrInstrument() {
        LoadStep step = TrialRecords.step(record, "25 %");
        step.setDwell(TimeSpan.valueOf("10 min"));
        coolant(step, 0, "70 degC").setAt(null);
        coolant(step, 5, "70 degC").setInstruments(" ");
        step.getReadings().add(TrialRecords.MAKE.createReading());

        StepReview review = StepReview.of(step);

        assertThat(review.readings()).as("an empty line is no reading").isEqualTo(2);
        assertThat(review.untimed()).isEqualTo(1);
        assertThat(review.withoutInstrument()).isEqualTo(1);
        // common practice: 15 min at a quarter of the load
        assertThat(review.lacks()).contains(Lack.TIMES, Lack.INSTRUMENTS, Lack.SHORT_DWELL).doesNotContain(Lack.DWELL);
    }
}
