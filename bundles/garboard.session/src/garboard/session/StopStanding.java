// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Missing;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/**
 * How things stand at one stop.
 *
 * @param worst the worst verdict, where any check speaks of it
 * @param needAction how many verdicts need action
 * @param cannotTell how many checks lack something
 * @param meets how many checks are met or accepted
 */
public record StopStanding(Optional<Verdict> worst, int needAction, int cannotTell, int meets) {

    private static final Comparator<Verdict> WORST = Comparator.comparing(Verdict::standing).thenComparing(verdict -> verdict.check().gravity());

    /** {@return the standing of each stop} Each verdict counts at one stop: that of its subject. */
    public static Map<Stop, StopStanding> of(Evaluation evaluation) {
        var byStop = new EnumMap<Stop, List<Verdict>>(Stop.class);
        for (Verdict verdict : evaluation.verdicts()) {
            byStop.computeIfAbsent(stop(verdict), key -> new ArrayList<>()).add(verdict);
        }
        var standings = new EnumMap<Stop, StopStanding>(Stop.class);
        for (Stop stop : Stop.values()) {
            standings.put(stop, of(byStop.getOrDefault(stop, List.of())));
        }
        return standings;
    }

    private static StopStanding of(List<Verdict> verdicts) {
        return new StopStanding(verdicts.stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY).min(WORST),
            (int) verdicts.stream().filter(Verdict::needsAction).count(),
            (int) verdicts.stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL).count(),
            (int) verdicts.stream().filter(verdict -> verdict.standing() == Standing.MEETS || verdict.standing() == Standing.ACCEPTED).count());
    }

    /**
     * {@return the stop where a verdict belongs} The place of its subject; when there is no such part in the record yet, the place where
     * it would be entered.
     */
    public static Stop stop(Verdict verdict) {
        if (!verdict.subjectKey().isEmpty()) {
            return Stop.of(verdict.subjectKey());
        }
        return verdict.missing().stream().findFirst().map(Missing::key).map(Stop::of).orElseGet(() -> Stop.of(verdict.check().subjectType()));
    }
}
