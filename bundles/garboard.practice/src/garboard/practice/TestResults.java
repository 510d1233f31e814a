// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.checks.Comparison;
import garboard.model.TestResult;

/** Comparisons of the result of a test that a person carried out. */
public final class TestResults {

    private TestResults() {
    }

    /** Holds when the test was passed. @param what what was tested, as the subject of a sentence */
    public static Comparison passed(TestResult result, String what) {
        return switch (result) {
            case PASSED -> Comparison.holds(what + " was tested and passed", true);
            case FAILED -> Comparison.holds(what + " was tested and failed", false);
            case NOT_TESTED, NOT_ENTERED -> Comparison.holds(what + " was not tested", false);
        };
    }
}
