// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * All verdicts on a record on a day.
 *
 * @param verdicts in the catalogue's order
 * @param practicesNotAtHand practices that the record asks for and that are not installed
 * @param day the day of the judgement
 */
public record Evaluation(List<Verdict> verdicts, List<String> practicesNotAtHand, LocalDate day) {

    private static final Comparator<Verdict> WORST_FIRST = Comparator.comparing(Verdict::standing)
            .thenComparing(verdict -> verdict.check().gravity());

    public Evaluation {
        verdicts = List.copyOf(verdicts);
        practicesNotAtHand = List.copyOf(practicesNotAtHand);
    }

    /** Worst first; within one standing the gravest first; else the catalogue's order. */
    public List<Verdict> worstFirst() {
        return verdicts.stream().sorted(WORST_FIRST).toList();
    }

    public List<Verdict> with(Standing standing) {
        return verdicts.stream().filter(verdict -> verdict.standing() == standing).toList();
    }

    public long count(Standing standing) {
        return verdicts.stream().filter(verdict -> verdict.standing() == standing).count();
    }

    /** Whether something needs action, see {@link Verdict#needsAction()}. */
    public boolean fallsShort() {
        return verdicts.stream().anyMatch(Verdict::needsAction);
    }

    public boolean checkBroke() {
        return count(Standing.CHECK_BROKE) > 0;
    }
}
