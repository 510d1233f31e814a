// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/**
 * A verdict that an edit made another one.
 *
 * @param key which verdict
 * @param before as it was; nothing for one that came
 * @param after as it is; nothing for one that went
 */
public record VerdictChange(VerdictKey key, Optional<Verdict> before, Optional<Verdict> after) {

    /** {@return what is told otherwise after than before, in the order of the later evaluation; then what went} */
    public static List<VerdictChange> between(Evaluation before, Evaluation after) {
        Map<VerdictKey, Verdict> earlier = new HashMap<>();
        before.verdicts().forEach(verdict -> earlier.put(VerdictKey.of(verdict), verdict));
        var changes = new ArrayList<VerdictChange>();
        for (Verdict now : after.verdicts()) {
            VerdictKey key = VerdictKey.of(now);
            Optional<Verdict> was = Optional.ofNullable(earlier.remove(key));
            if (was.isEmpty() || tellsOtherwise(was.get(), now)) {
                changes.add(new VerdictChange(key, was, Optional.of(now)));
            }
        }
        before.verdicts().stream().filter(gone -> earlier.containsKey(VerdictKey.of(gone)))
            .forEach(gone -> changes.add(new VerdictChange(VerdictKey.of(gone), Optional.of(gone), Optional.empty())));
        return changes;
    }

    private static boolean tellsOtherwise(Verdict was, Verdict now) {
        return was != now && !(was.standing() == now.standing() && was.sentence().equals(now.sentence()) && was.measured().equals(now.measured())
            && was.limit().equals(now.limit()) && was.acceptance().equals(now.acceptance()));
    }

    /** {@return whether the standing is another one, and not only a figure} */
    public boolean standingChanged() {
        return !before.map(Verdict::standing).equals(after.map(Verdict::standing));
    }

    /** {@return whether it stands worse than before} What came into being and is not met counts, what went does not. */
    public boolean isWorse() {
        return after.isPresent() && rank(after) < rank(before);
    }

    /** {@return whether it stands better than before} */
    public boolean isBetter() {
        return after.isPresent() && rank(after) > rank(before);
    }

    /** What is met, does not apply or is not there is equally well; else the standings are told apart as they are listed. */
    private static int rank(Optional<Verdict> verdict) {
        return Math.min(verdict.map(Verdict::standing).orElse(Standing.MEETS).ordinal(), Standing.MEETS.ordinal());
    }
}
