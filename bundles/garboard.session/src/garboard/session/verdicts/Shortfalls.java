// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;

/** The verdicts that need action, to be gone through from the worst on, round and round. */
public final class Shortfalls {

    private Shortfalls() {
    }

    /** {@return the one after the chosen one; the worst when none of them is chosen, or when it was mended; nothing when there is none} */
    public static Optional<Verdict> next(Evaluation evaluation, Optional<VerdictKey> chosen) {
        return step(evaluation, chosen, 1);
    }

    /** {@return the one before the chosen one; the mildest when none of them is chosen} */
    public static Optional<Verdict> previous(Evaluation evaluation, Optional<VerdictKey> chosen) {
        return step(evaluation, chosen, -1);
    }

    private static Optional<Verdict> step(Evaluation evaluation, Optional<VerdictKey> chosen, int by) {
        List<Verdict> shortfalls = evaluation.worstFirst().stream().filter(Verdict::needsAction).toList();
        if (shortfalls.isEmpty()) {
            return Optional.empty();
        }
        int from = chosen.map(key -> shortfalls.stream().map(VerdictKey::of).toList().indexOf(key)).orElse(-1);
        int to = from < 0 && by < 0 ? shortfalls.size() - 1 : from + by;
        return Optional.of(shortfalls.get(Math.floorMod(to, shortfalls.size())));
    }
}
