// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.SeacockState;
import garboard.model.Trial;
import garboard.quantity.TimeSpan;
import garboard.session.Edits;
import garboard.session.Field;
import garboard.session.OpenRecord;

/**
 * A stop-watch for the tries of the starter. The try is in the record from the moment the starter turns, so that it is not lost when the voltage
 * that it pulls down takes the computer with it; its duration follows when it ends.
 */
public final class AttemptWatch {

    /** Two tries further apart than this do not belong to one series; the time between them is no rest. */
    private static final Duration LONGEST_REST = Duration.ofHours(1);

    private final OpenRecord open;
    private final Edits edits;
    private final Clock clock;
    private Optional<CrankingAttempt> attempt = Optional.empty();
    private Instant began = Instant.EPOCH;

    public AttemptWatch(OpenRecord open, Clock clock) {
        this.open = open;
        this.edits = open.edits();
        this.clock = clock;
    }

    /** A try that is going on, and for how long. */
    public record Running(CrankingAttempt attempt, TimeSpan sofar) {
    }

    /** {@return the try that is going on; none any more when it was undone or taken away} */
    public Optional<Running> running() {
        return attempt.filter(found -> found.eContainer() != null).map(found -> new Running(found, sofar()));
    }

    /** Starts the watch with a new try. @return the try */
    public CrankingAttempt start(SeacockState seacock, String label) {
        Optional<TimeSpan> rest = rest(OffsetDateTime.now(clock));
        CrankingAttempt made = GarboardFactory.eINSTANCE.createCrankingAttempt();
        made.setAt(OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
        made.setSeacock(seacock);
        rest.ifPresent(made::setRest);
        edits.add(open.record(), List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__ATTEMPTS), made, label);
        attempt = Optional.of(made);
        began = clock.instant();
        return made;
    }

    /** Stops the watch: the starter is off. */
    public void stop(Answer fired, String label) {
        running().ifPresent(now -> edits.together(label, () -> {
            edits.set(Field.of(now.attempt(), Literals.CRANKING_ATTEMPT__DURATION), now.sofar(), label);
            edits.set(Field.of(now.attempt(), Literals.CRANKING_ATTEMPT__FIRED), fired, label);
        }));
        attempt = Optional.empty();
    }

    /** A thumb is not quicker than a tenth of a second. */
    private TimeSpan sofar() {
        double seconds = Math.max(0, Duration.between(began, clock.instant()).toMillis() / 1000.0);
        return TimeSpan.valueOf(String.format(Locale.ROOT, "%.1f s", seconds));
    }

    private Optional<TimeSpan> rest(OffsetDateTime now) {
        List<CrankingAttempt> before = Optional.ofNullable(open.record().getTrial()).<List<CrankingAttempt>>map(Trial::getAttempts)
            .orElse(List.of());
        if (before.isEmpty() || before.getLast().getAt() == null || before.getLast().getDuration() == null) {
            return Optional.empty();
        }
        Duration rest = Duration.between(before.getLast().getAt().plus(millis(before.getLast().getDuration())), now);
        return Optional.of(rest).filter(time -> !time.isNegative() && time.compareTo(LONGEST_REST) <= 0)
            .map(time -> TimeSpan.valueOf(time.toSeconds() + " s"));
    }

    private static Duration millis(TimeSpan time) {
        return Duration.ofMillis(Math.round(time.si() * 1000));
    }
}
