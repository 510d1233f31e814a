// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.checks.Comparison;
import garboard.model.Answer;

/** Comparisons of plain answers; each of the two sentences says what was found, for the one case and for the other. */
public final class Answers {

    private Answers() {
    }

    /** Holds when the answer is yes. */
    public static Comparison yes(Answer answer, String whenItHolds, String whenItDoesNot) {
        return holds(answer == Answer.YES, whenItHolds, whenItDoesNot);
    }

    /** Holds when the answer is no. */
    public static Comparison no(Answer answer, String whenItHolds, String whenItDoesNot) {
        return holds(answer == Answer.NO, whenItHolds, whenItDoesNot);
    }

    /** Holds when the answer is yes; a law that applies is not answered by marking its question as not applicable. */
    public static Comparison demanded(Answer answer, String whenItHolds, String whenItDoesNot) {
        return answer == Answer.NOT_APPLICABLE ? Comparison.holds("marked as not applicable, but the rule applies here", false)
            : yes(answer, whenItHolds, whenItDoesNot);
    }

    private static Comparison holds(boolean holds, String whenItHolds, String whenItDoesNot) {
        return Comparison.holds(holds ? whenItHolds : whenItDoesNot, holds);
    }
}
