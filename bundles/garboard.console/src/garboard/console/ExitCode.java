// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import garboard.checks.Evaluation;

/** The exit codes; scripts rely on them. */
final class ExitCode {

    static final int NOTHING_FALLS_SHORT = 0;
    static final int SOMETHING_FALLS_SHORT = 1;
    static final int CANNOT_READ = 2;
    static final int CHECK_BROKE = 3;

    private ExitCode() {
    }

    static int of(Evaluation evaluation) {
        if (evaluation.checkBroke()) {
            return CHECK_BROKE;
        }
        return evaluation.fallsShort() ? SOMETHING_FALLS_SHORT : NOTHING_FALLS_SHORT;
    }
}
