// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.SeacockState;
import garboard.quantity.TimeSpan;
import garboard.session.OpenRecord;

class AttemptWatchTest {

    private final HandClock clock = HandClock.at("2026-05-01T10:00:07+02:00");
    private final OpenRecord open = TrialRecords.of(TrialRecords.withMuffler(), clock);
    private final AttemptWatch watch = new AttemptWatch(open, clock);

    @Test
    void putsTheTryIntoTheRecordWhenTheStarterTurns() {
        CrankingAttempt attempt = watch.start(SeacockState.OPEN, "Crank");

        assertThat(open.record().getTrial().getAttempts()).containsExactly(attempt);
        assertThat(attempt.getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T10:00:07+02:00"));
        assertThat(attempt.getDuration()).isNull();
        assertThat(attempt.getRest()).isNull();
        assertThat(watch.running()).isPresent();
    }

    @Test
    void timesTheTryToATenthOfASecond() {
        CrankingAttempt attempt = watch.start(SeacockState.OPEN, "Crank");
        clock.pass(Duration.ofMillis(4270));
        assertThat(watch.running().orElseThrow().sofar()).isEqualTo(TimeSpan.valueOf("4.3 s"));

        watch.stop(Answer.NO, "Starter off");

        assertThat(attempt.getDuration()).isEqualTo(TimeSpan.valueOf("4.3 s"));
        assertThat(attempt.getFired()).isEqualTo(Answer.NO);
        assertThat(watch.running()).isEmpty();
        open.edits().undo();
        assertThat(attempt.getDuration()).isNull();
        assertThat(attempt.getFired()).isEqualTo(Answer.UNANSWERED);
    }

    @Test
    void measuresTheRestSinceTheTryBefore() {
        watch.start(SeacockState.OPEN, "Crank");
        clock.pass(Duration.ofSeconds(5));
        watch.stop(Answer.NO, "Starter off");
        clock.pass(Duration.ofSeconds(40));

        assertThat(watch.start(SeacockState.OPEN, "Crank").getRest()).isEqualTo(TimeSpan.valueOf("40 s"));
    }

    @Test
    void takesNoRestFromATryOfAnotherDay() {
        watch.start(SeacockState.OPEN, "Crank");
        clock.pass(Duration.ofSeconds(5));
        watch.stop(Answer.NO, "Starter off");
        clock.pass(Duration.ofDays(1));

        assertThat(watch.start(SeacockState.OPEN, "Crank").getRest()).isNull();
    }

    @Test
    void countsTheWaterWhileTheStarterTurns() {
        watch.start(SeacockState.OPEN, "Crank");
        clock.pass(Duration.ofSeconds(12));

        assertThat(CrankingWater.of(open.record()).untimed()).isEqualTo(1);
        CrankingWater water = CrankingWater.of(open.record(), watch.running());
        assertThat(water.cranked().in("s")).isEqualTo(12);
        assertThat(water.untimed()).isZero();
        assertThat(water.level()).as("9.3 s of 21.3 s left").isEqualTo(CrankingWater.Level.NEAR);
    }

    @Test
    void forgetsATryThatIsUndone() {
        watch.start(SeacockState.OPEN, "Crank");
        open.edits().undo();

        assertThat(watch.running()).isEqualTo(Optional.empty());
        watch.stop(Answer.YES, "Starter off");
        assertThat(open.record().getTrial().getAttempts()).isEmpty();
    }
}
