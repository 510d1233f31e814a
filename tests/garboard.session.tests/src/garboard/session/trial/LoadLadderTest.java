// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.LoadStep;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.session.OpenRecord;

class LoadLadderTest {

    private final HandClock clock = HandClock.at("2026-05-01T10:00:00+02:00");

    @Test
    void makesFiveStepsWithOnePress() {
        OpenRecord open = TrialRecords.of(TrialRecords.empty(), clock);

        LoadLadder.make(open, "Steps");

        // common practice: a short trial of a small set goes 0, 25, 50, 75, 100 %
        assertThat(loads(open.record())).containsExactly("0 %", "25 %", "50 %", "75 %", "100 %");
        open.edits().undo();
        assertThat(open.record().getTrial()).isNull();
    }

    @Test
    void goesTenPerCentOverOnlyWhereTheRatingDeclaresIt() {
        CommissioningRecord record = TrialRecords.withTrial();
        assertThat(LoadLadder.rungs(record)).hasSize(5);
        record.getGeneratorSet().setOverloadDeclared(Answer.NO);
        assertThat(LoadLadder.rungs(record)).hasSize(5);

        record.getGeneratorSet().setOverloadDeclared(Answer.YES);

        assertThat(LoadLadder.rungs(record)).last().extracting(rung -> rung.load().toString()).isEqualTo("110 %");
    }

    @Test
    void putsMissingStepsBetweenThoseThatAreThere() {
        CommissioningRecord record = TrialRecords.withTrial();
        TrialRecords.step(record, "0.25");
        TrialRecords.step(record, "60 %");
        TrialRecords.step(record, "100 %");
        TrialRecords.step(record, "0 %");
        OpenRecord open = TrialRecords.of(record, clock);

        LoadLadder.make(open, "Steps");

        assertThat(loads(record)).containsExactly("0.25", "50 %", "60 %", "75 %", "100 %", "0 %");
        assertThat(LoadLadder.missing(record)).isEmpty();
        LoadLadder.make(open, "Steps");
        assertThat(record.getTrial().getLoadSteps()).hasSize(6);
    }

    @Test
    void knowsWhatIsUsualAtALoad() {
        CommissioningRecord record = TrialRecords.withTrial();

        // common practice: full load for an hour with five readings, half load for half an hour with four
        assertThat(LoadLadder.usual(TrialRecords.step(record, "1"))).hasValueSatisfying(rung -> {
            assertThat(rung.dwell()).isEqualTo(TimeSpan.valueOf("60 min"));
            assertThat(rung.readings()).isEqualTo(5);
        });
        assertThat(LoadLadder.usual(TrialRecords.step(record, "50 %"))).hasValueSatisfying(rung -> {
            assertThat(rung.dwell()).isEqualTo(TimeSpan.valueOf("30 min"));
            assertThat(rung.readings()).isEqualTo(4);
        });
        assertThat(LoadLadder.usual(TrialRecords.step(record, "60 %"))).isEmpty();
        assertThat(LoadLadder.usual(TrialRecords.MAKE.createLoadStep())).isEmpty();
    }

    private static java.util.List<String> loads(CommissioningRecord record) {
        return record.getTrial().getLoadSteps().stream().map(LoadStep::getLoad).map(Ratio::toString).toList();
    }
}
