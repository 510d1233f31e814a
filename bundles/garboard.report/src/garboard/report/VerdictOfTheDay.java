// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import garboard.checks.Verdict;

/**
 * A verdict as plain text, kept in the workbook beside the record so that a later reader sees what was said on the day. Figures stand
 * exactly, as the quantities themselves write them; what is not there is an empty text.
 *
 * @param check id of the check
 * @param subject stable key of the subject
 * @param standing the word of the standing
 * @param measured measured value
 * @param limit limit used
 * @param margin signed distance from the limit
 * @param sentence what was found
 */
public record VerdictOfTheDay(String check, String subject, String standing, String measured, String limit, String margin,
        String sentence) {

    /** {@return a verdict as plain text} */
    public static VerdictOfTheDay of(Verdict verdict) {
        return new VerdictOfTheDay(verdict.check().id(), verdict.subjectKey(), verdict.standing().label(),
            verdict.measured().map(Object::toString).orElse(""), verdict.limit().map(limit -> limit.value().toString()).orElse(""),
            verdict.margin().map(margin -> margin.distance().toString()).orElse(""), verdict.sentence());
    }
}
