// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;

import garboard.checks.Catalogue;
import garboard.checks.Remedy;
import garboard.checks.Verdict;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** A verdict in full, as a text: what must hold, what was found, the figures, why, by which rule, and what to do. */
final class DetailText {

    private final Texts.Of texts;
    private final VerdictWords words;
    private final Palette palette;
    private final int mark;
    private final Prose prose = new Prose();

    /** @param mark the size of the mark at the head */
    DetailText(Texts.Of texts, VerdictWords words, Palette palette, int mark) {
        this.texts = texts;
        this.words = words;
        this.palette = palette;
        this.mark = mark;
    }

    Prose of(Verdict verdict, Catalogue catalogue) {
        prose.addDrawn(mark * 3 / 2, mark);
        prose.add(texts.get("detail.standing", words.standing(verdict.standing()), words.gravity(verdict)), palette.of(verdict.standing()), SWT.BOLD).line();
        prose.add(verdict.check().title(), palette.ink(), SWT.BOLD).line();
        prose.add(words.subject(verdict), palette.faint(), SWT.NORMAL).line();
        paragraph(words.sentence(verdict));
        figures(verdict);
        verdict.acceptance().ifPresent(acceptance -> section("detail.acceptance", acceptance));
        verdict.remedy().ifPresent(remedy -> remedy(verdict, remedy));
        section("detail.why", verdict.check().why());
        section("detail.basis", words.basis(verdict));
        if (!verdict.check().basis().otherFigures().isEmpty()) {
            section("detail.others", verdict.check().basis().otherFigures());
        }
        section("detail.check", texts.get("detail.check.of", verdict.check().id(), catalogue.practiceOf(verdict.check()).name()));
        return prose;
    }

    private void figures(Verdict verdict) {
        figure("detail.measured", words.measured(verdict));
        figure("detail.limit", words.limit(verdict));
        figure("detail.margin", words.margin(verdict));
    }

    private void figure(String label, Optional<String> figure) {
        figure.ifPresent(shown -> prose.add(texts.get(label) + "\t", palette.faint(), SWT.NORMAL).add(shown, palette.ink(), SWT.NORMAL).line());
    }

    private void remedy(Verdict verdict, Remedy remedy) {
        section("detail.remedy", remedy.text());
        List<String> changes = words.changes(verdict);
        changes.forEach(change -> prose.add(change, palette.accent(), SWT.NORMAL).line());
        if (changes.isEmpty()) {
            prose.add(texts.get("detail.onBoard"), palette.faint(), SWT.NORMAL).line();
        }
    }

    private void section(String label, String text) {
        prose.line().add(texts.get(label), palette.faint(), SWT.NORMAL).line();
        prose.add(text, palette.ink(), SWT.NORMAL).line();
    }

    private void paragraph(String text) {
        prose.line().add(text, palette.ink(), SWT.NORMAL).line();
    }
}
