// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;

import garboard.checks.Missing;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;
import garboard.session.verdicts.Inputs;
import garboard.session.verdicts.RemedyOutcome;
import garboard.session.verdicts.VerdictChange;
import garboard.session.verdicts.VerdictKey;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** The chosen verdict in full, below the list: to be read, with the ways to the fields and what can be done about it. */
final class VerdictDetail {

    private static final int MOST_WORSE = 5;

    private final Desk desk;
    private final Texts.Of texts;
    private final Composite area;
    private final StyledText text;
    private final Link outcome;
    private final Link places;
    private final VerdictDeeds deeds;
    private Optional<Verdict> shown = Optional.empty();

    VerdictDetail(Composite parent, Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(VerdictDetail.class);
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(parent, 0.4)).applyTo(area);
        outcome = link("verdicts.outcome", texts.get("outcome.name"));
        text = new StyledText(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        text.setData("garboard.id", "verdicts.detail");
        text.setAlwaysShowScrollBars(false);
        int margin = Lettering.width(text, 1);
        text.setMargins(margin, margin / 2, margin, margin / 2);
        text.setCaret(null);
        Spoken.name(text, texts.get("detail"));
        text.addPaintObjectListener(event -> shown.ifPresent(verdict -> {
            int size = event.ascent;
            Mark.draw(event.gc, desk.palette(), verdict.standing(), event.x, event.y + Math.max(0, (text.getLineHeight() - size) / 2), size);
        }));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
        places = link("verdicts.places", texts.get("places.inputs.name"));
        deeds = new VerdictDeeds(area, desk, this::tell);
        paint();
        show(Optional.empty(), Optional.empty());
    }

    private Link link(String id, String name) {
        var link = new Link(area, SWT.WRAP);
        link.setData("garboard.id", id);
        Spoken.name(link, name);
        link.addListener(SWT.Selection, event -> follow(event.text));
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(link);
        link.setVisible(false);
        return link;
    }

    /** A link leads to a place of the record, or to another verdict. */
    private void follow(String target) {
        VerdictLinks.verdict(target).ifPresentOrElse(desk::lookAt, () -> desk.goTo(target));
    }

    Composite control() {
        return area;
    }

    /** {@return the controls in which the keys of the list hold, too} */
    List<Control> readers() {
        return List.of(text);
    }

    VerdictDeeds deeds() {
        return deeds;
    }

    /** Shows a verdict of an open record, or nothing. What is shown already stays untouched. */
    void show(Optional<OpenRecord> record, Optional<Verdict> verdict) {
        if (shown.isPresent() && verdict.isPresent() && shown.get() == verdict.get()) {
            return;
        }
        boolean other = !shown.map(VerdictKey::of).equals(verdict.map(VerdictKey::of));
        shown = verdict;
        deeds.show(record, verdict);
        if (record.isEmpty() || verdict.isEmpty()) {
            say(texts.get(record.isEmpty() ? "list.none" : "detail.none"));
            return;
        }
        write(record.get(), verdict.get(), other);
    }

    /** What a remedy did is told until the next edit, or until another verdict is chosen. */
    void forgetOutcome() {
        put(outcome, "");
    }

    /** Shows the same anew, in other units or colours. */
    void renew(Optional<OpenRecord> record) {
        Optional<Verdict> verdict = shown;
        shown = Optional.empty();
        String told = outcome.getText();
        paint();
        show(record, verdict);
        put(outcome, told);
    }

    /** Shows a sentence instead of a verdict. */
    void say(String sentence) {
        shown = Optional.empty();
        if (!sentence.equals(text.getText())) {
            text.setText(sentence);
            text.setStyleRange(null);
        }
        put(places, "");
    }

    private void write(OpenRecord record, Verdict verdict, boolean fromTop) {
        var words = new VerdictWords(desk, record);
        Prose prose = new DetailText(texts, words, desk.palette(), Lettering.height(text, 0.9)).of(verdict, record.verdicts().catalogue());
        int top = text.getTopPixel();
        text.setText(prose.text());
        text.setStyleRanges(prose.ranges());
        int tab = Lettering.width(text, 14);
        text.setTabStops(new int[] {tab});
        prose.tabbed().forEach(line -> text.setLineWrapIndent(line, 1, tab));
        text.setTopPixel(fromTop ? 0 : top);
        boolean lacking = verdict.standing() == Standing.CANNOT_TELL && !verdict.missing().isEmpty();
        List<String> keys = lacking ? verdict.missing().stream().map(Missing::key).toList() : Inputs.keys(verdict);
        put(places, texts.get(lacking ? "places.missing" : "places.inputs", VerdictLinks.list(words.shortPlaces(keys))));
        Spoken.name(places, texts.get(lacking ? "places.missing.name" : "places.inputs.name"));
    }

    /** Tells what a remedy did. */
    private void tell(RemedyOutcome done) {
        var sentences = new StringBuilder(done.after().map(now -> texts.get("outcome.now", texts.get("standing." + now.standing().name())))
            .orElse(texts.get("outcome.gone")));
        if (!done.worse().isEmpty()) {
            List<VerdictChange> worse = done.worse().stream().limit(MOST_WORSE).toList();
            sentences.append(' ').append(texts.get("outcome.worse", done.worse().size(), VerdictLinks.verdicts(worse))
                + (worse.size() < done.worse().size() ? " …" : ""));
        }
        if (!done.better().isEmpty()) {
            sentences.append(' ').append(texts.get("outcome.better", done.better().size()));
        }
        put(outcome, sentences.append(' ').append(texts.get("outcome.undo")).toString());
    }

    private void put(Link link, String words) {
        if (!words.equals(link.getText())) {
            link.setText(words);
            link.setVisible(!words.isEmpty());
            ((GridData) link.getLayoutData()).exclude = words.isEmpty();
            area.layout();
        }
    }

    private void paint() {
        text.setBackground(desk.palette().sheet());
        text.setForeground(desk.palette().faint());
    }
}
