// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.Labels;
import garboard.model.RecordPath;
import garboard.quantity.Quantity;

/**
 * What the sheets are made from. Read only.
 *
 * @param record the record
 * @param evaluation the verdicts on it
 * @param options what the reader wants
 * @param labels the words of the model
 * @param figures the figures in the wanted units
 */
record Material(CommissioningRecord record, Evaluation evaluation, ReportOptions options, Labels labels, Figures figures) {

    private static final String NOT_ENTERED = "not entered";

    Material {
        Objects.requireNonNull(record, "record");
        Objects.requireNonNull(evaluation, "evaluation");
    }

    static Material of(CommissioningRecord record, Evaluation evaluation, ReportOptions options) {
        return new Material(record, evaluation, options, Labels.in(Locale.ENGLISH), Figures.in(options.units()));
    }

    /** The subject of a verdict in words. */
    String subject(Verdict verdict) {
        return verdict.subject() == null || verdict.subject().eContainer() == null ? "The record"
            : RecordPath.words(verdict.subject(), labels);
    }

    /** What was found, as a sentence begins. */
    static String sentence(Verdict verdict) {
        return beginning(verdict.sentence());
    }

    /** A text as a sentence begins. */
    static String beginning(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A text of the record, or the words that it is missing. */
    static String orMissing(String text) {
        return present(text).orElse(NOT_ENTERED);
    }

    /** A text of the record, where there is one. */
    static Optional<String> present(String text) {
        return Optional.ofNullable(text).map(String::strip).filter(stripped -> !stripped.isEmpty());
    }

    static String orEmpty(Object value) {
        return value == null ? "" : value.toString();
    }

    /** A quantity as it was given, where it was. */
    static Cell given(Quantity<?> quantity) {
        return quantity == null ? Cell.BLANK : Cell.text(quantity.toString());
    }
}
