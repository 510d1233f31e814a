// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/**
 * How far a record is.
 *
 * @param decided how many checks say something, good or bad
 * @param apply how many checks concern this installation, as far as can be told
 * @param needAction how many of those decided need action
 */
public record Progress(int decided, int apply, int needAction) {

    public static Progress of(Evaluation evaluation) {
        int apply = evaluation.verdicts().size() - (int) evaluation.count(Standing.DOES_NOT_APPLY);
        int undecided = (int) (evaluation.count(Standing.CANNOT_TELL) + evaluation.count(Standing.CHECK_BROKE));
        return new Progress(apply - undecided, apply, (int) evaluation.verdicts().stream().filter(Verdict::needsAction).count());
    }
}
