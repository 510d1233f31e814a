// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.CustomaryUnits;
import garboard.model.Labels;
import garboard.model.RecordPath;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;

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
    private static final String STEP = " \u203a ";

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

    /** The same without the name of the system, for places that stand under it. */
    String subjectInSystem(Verdict verdict) {
        String words = subject(verdict);
        int step = words.indexOf(STEP);
        return step < 0 ? "" : words.substring(step + STEP.length());
    }

    /** A quantity as given, and where the given unit is not the report's, the same in the report's in brackets. */
    String inBoth(Quantity<?> quantity, EAttribute field) {
        String unit = unit(field);
        boolean same = quantity.si() == 0 || quantity instanceof TimeSpan || Figures.sign(quantity.givenUnit()).equals(Figures.sign(unit));
        return same ? quantity.toString() : quantity + " (" + figures.text(quantity, unit) + ")";
    }

    /** The unit in which people speak of a field: a filter's fineness in micrometres, an hour meter in hours. */
    String unit(EAttribute field) {
        return CustomaryUnits.of(options.units()).unit(field);
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
