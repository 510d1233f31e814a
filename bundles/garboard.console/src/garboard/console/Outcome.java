// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.util.Arrays;
import java.util.stream.Collectors;

import garboard.checks.Evaluation;
import garboard.checks.Standing;

/** The outcome of an evaluation in words, the same for every command. */
final class Outcome {

    static final String CERTIFIES_NOTHING = "This compares what was entered with stated practice. It certifies nothing; local codes and licensed trades decide.";

    private Outcome() {
    }

    static String counts(Evaluation evaluation) {
        return Arrays.stream(Standing.values()).filter(standing -> evaluation.count(standing) > 0)
                .map(standing -> evaluation.count(standing) + " " + standing.label()).collect(Collectors.joining(", "));
    }

    static String sentence(Evaluation evaluation) {
        long needing = evaluation.verdicts().stream().filter(verdict -> verdict.needsAction()).count();
        long unknown = evaluation.count(Standing.CANNOT_TELL);
        String open = unknown == 0 ? "" : " " + unknown + (unknown == 1 ? " check" : " checks") + " cannot tell for want of input.";
        if (evaluation.checkBroke()) {
            return evaluation.count(Standing.CHECK_BROKE) + " could not be carried out; the result is incomplete." + open;
        }
        return (needing == 0 ? "Nothing falls short." : needing + (needing == 1 ? " finding needs" : " findings need") + " action.") + open;
    }
}
