// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import garboard.checks.Verdict;

/**
 * Which verdict it is: the same one before and after it is judged anew.
 *
 * @param check id of the check
 * @param subject key of the place that it judges
 */
public record VerdictKey(String check, String subject) {

    public static VerdictKey of(Verdict verdict) {
        return new VerdictKey(verdict.check().id(), verdict.subjectKey());
    }
}
