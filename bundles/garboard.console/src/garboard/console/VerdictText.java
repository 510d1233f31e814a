// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.PrintStream;
import java.util.List;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.quantity.Display;
import garboard.quantity.UnitSystem;

/** Verdicts as text for a person: worst first, each with the limit used, where it comes from and the way out. */
final class VerdictText {

    private static final int WIDTH = 100;

    private final PrintStream out;
    private final boolean all;
    private final Display display = Display.of(UnitSystem.SI);

    VerdictText(PrintStream out, boolean all) {
        this.out = out;
        this.all = all;
    }

    void write(CommissioningRecord record, Evaluation evaluation) {
        out.println(Headings.of(record));
        for (String practice : evaluation.practicesNotAtHand()) {
            out.println("Warning: the record asks for the practice \"" + practice + "\", which is not installed here.");
        }
        for (Standing standing : Standing.values()) {
            List<Verdict> verdicts = evaluation.worstFirst().stream().filter(verdict -> verdict.standing() == standing).toList();
            boolean listed = all || standing != Standing.MEETS && standing != Standing.DOES_NOT_APPLY;
            if (!verdicts.isEmpty() && listed) {
                out.println();
                out.println(standing.label().toUpperCase(java.util.Locale.ROOT) + " (" + verdicts.size() + ")");
                verdicts.forEach(this::write);
            }
        }
        out.println();
        out.println(Outcome.counts(evaluation));
        out.println(Outcome.sentence(evaluation));
        out.println(Outcome.CERTIFIES_NOTHING);
    }

    private void write(Verdict verdict) {
        out.println();
        out.println("  " + verdict.check().id() + "  " + verdict.check().title()
                + (verdict.standing() == Standing.MEETS || verdict.standing() == Standing.DOES_NOT_APPLY ? ""
                        : "  [" + verdict.check().gravity().label() + "]"));
        indented("", verdict.subjectLabel().isBlank() ? verdict.sentence() : verdict.subjectLabel() + ": " + verdict.sentence());
        verdict.limit().ifPresent(limit -> indented("limit   ", display.format(limit.value()) + " (" + limit.origin() + ")"
                + verdict.margin().map(margin -> ", margin " + display.format(margin.distance())).orElse("")));
        if (verdict.standing() == Standing.FALLS_SHORT || verdict.standing() == Standing.BORDERLINE
                || verdict.standing() == Standing.ACCEPTED) {
            indented("why     ", verdict.check().why());
        }
        verdict.remedy().ifPresent(remedy -> indented("remedy  ", remedy.text()));
        verdict.acceptance().ifPresent(acceptance -> indented("accepted", " " + acceptance));
        if (verdict.standing() != Standing.DOES_NOT_APPLY && verdict.standing() != Standing.CANNOT_TELL) {
            indented("basis   ", verdict.check().basis() + (verdict.check().basis().otherFigures().isBlank() ? ""
                    : "; other figures: " + verdict.check().basis().otherFigures()));
        }
    }

    private void indented(String label, String text) {
        String lead = "      " + label + (label.isEmpty() ? "" : " ");
        Wrapping.lines(text, WIDTH - lead.length()).stream().reduce(lead, (start, line) -> {
            out.println(start + line);
            return " ".repeat(lead.length());
        });
    }
}
