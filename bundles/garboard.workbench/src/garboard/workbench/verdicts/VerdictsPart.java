// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.verdicts.VerdictChange;
import garboard.session.verdicts.VerdictFilter;
import garboard.session.verdicts.VerdictKey;
import garboard.session.verdicts.VerdictList;
import garboard.session.verdicts.VerdictList.Heading;
import garboard.session.verdicts.VerdictList.Line;
import garboard.session.verdicts.VerdictList.Row;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** What the checks say of the open record, worst first, as it stands at this moment; and the chosen verdict in full. */
public final class VerdictsPart {

    @Inject
    private Desk desk;
    private final List<Subscription> subscriptions = new ArrayList<>();
    private Composite area;
    private Texts.Of texts;
    private Label counts;
    private FilterBar bar;
    private VerdictTable table;
    private VerdictDetail detail;
    private Optional<Subscription> following = Optional.empty();
    private Optional<Evaluation> seen = Optional.empty();

    @PostConstruct
    void create(Composite parent) {
        area = parent;
        texts = desk.texts(VerdictsPart.class);
        int margin = Lettering.width(parent, 1);
        GridLayoutFactory.fillDefaults().margins(margin, margin).spacing(0, margin / 2).applyTo(parent);
        var heading = new Label(parent, SWT.NONE);
        heading.setText(texts.get("heading"));
        Lettering.heading(heading, 115);
        counts = new Label(parent, SWT.WRAP);
        counts.setData("garboard.id", "verdicts.counts");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(counts);
        bar = new FilterBar(parent, desk, this::filter);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.control());
        var sash = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new VerdictTable(sash, desk, this::choose);
        detail = new VerdictDetail(sash, desk);
        sash.setWeights(6, 7);
        sash.setSashWidth(Math.max(4, margin / 2));
        keys();
        subscriptions.add(desk.onOpen(this::open));
        subscriptions.add(desk.onGo(place -> bar.follow(place.stop())));
        subscriptions.add(desk.onLook(this::lookAt));
        subscriptions.add(desk.onPalette(palette -> repaint()));
        subscriptions.add(desk.settings().onChange(settings -> repaint()));
        open(desk.open());
    }

    private void keys() {
        detail.deeds().keysIn(table.control());
        detail.readers().forEach(detail.deeds()::keysIn);
        // Not DefaultSelection: GTK tells that for Ctrl+Enter, too.
        table.control().addListener(SWT.MouseDoubleClick, event -> detail.deeds().go());
        table.control().addListener(SWT.KeyDown, this::escape);
        bar.onLeave(table::enter);
    }

    private void escape(Event event) {
        if (event.keyCode == SWT.ESC && event.stateMask == 0) {
            bar.clear();
        }
    }

    private void open(Optional<OpenRecord> record) {
        following.ifPresent(Subscription::close);
        following = record.map(one -> one.verdicts().onChange(this::show));
        seen = Optional.empty();
        detail.show(record, Optional.empty());
        table.begin(record.map(one -> new VerdictWords(desk, one)));
        record.ifPresent(one -> show(one.verdicts().evaluation()));
    }

    /** Shows what an edit made of the verdicts. */
    private void show(Evaluation now) {
        List<VerdictKey> changed = seen.map(before -> VerdictChange.between(before, now).stream().filter(change -> change.after().isPresent())
            .map(VerdictChange::key).toList()).orElse(List.of());
        seen = Optional.of(now);
        detail.forgetOutcome();
        VerdictList list = list(now);
        table.show(list, changed);
        bar.show(list);
        count(now);
        detail.show(desk.open(), chosen(now));
    }

    private VerdictList list(Evaluation now) {
        return VerdictList.of(now, bar.filter(), table.chosen());
    }

    private Optional<Verdict> chosen(Evaluation now) {
        return table.chosen().flatMap(key -> now.verdicts().stream().filter(verdict -> VerdictKey.of(verdict).equals(key)).findFirst());
    }

    private void count(Evaluation now) {
        String words = texts.get("heading.counts", (int) now.verdicts().stream().filter(Verdict::needsAction).count(),
            (int) now.count(Standing.CANNOT_TELL));
        if (!words.equals(counts.getText())) {
            counts.setText(words);
        }
    }

    private void filter(VerdictFilter filter) {
        seen.ifPresent(now -> {
            // Who asks for others no longer looks at this one, unless it is among them.
            VerdictList list = VerdictList.of(now, bar.filter(), Optional.empty());
            table.showFromTop(list);
            bar.show(list);
            detail.show(desk.open(), chosen(now));
            if (list.isEmpty()) {
                detail.say(texts.get("list.empty"));
            }
        });
    }

    private void choose(Optional<Row> row) {
        switch (row.orElse(null)) {
            case Line line -> {
                if (!desk.verdict().equals(Optional.of(line.key()))) {
                    detail.forgetOutcome();
                }
                detail.show(desk.open(), Optional.of(line.verdict()));
                desk.lookAt(line.key());
                // One that was kept though its standing is hidden may go now.
                seen.ifPresent(now -> table.show(list(now)));
            }
            case Heading heading -> {
                detail.show(desk.open(), Optional.empty());
                detail.say(texts.get("means." + heading.standing().name()) + ".");
            }
            case null -> detail.show(desk.open(), Optional.empty());
        }
    }

    private void lookAt(VerdictKey key) {
        if (table.selected().filter(row -> row instanceof Line line && line.key().equals(key)).isPresent()) {
            return;
        }
        if (!table.reveal(key)) {
            seen.flatMap(now -> now.verdicts().stream().filter(verdict -> VerdictKey.of(verdict).equals(key)).findFirst())
                .ifPresent(verdict -> {
                    bar.makeRoomFor(verdict.standing());
                    table.reveal(key);
                });
        }
    }

    /** Puts the focus where words can be searched for. */
    public void find() {
        bar.find();
    }

    private void repaint() {
        table.paint();
        bar.paint();
        detail.renew(desk.open());
    }

    @Focus
    void focus() {
        // A click on something else in here activates the part, too.
        if (!holdsFocus()) {
            table.enter();
        }
    }

    private boolean holdsFocus() {
        Control control = table.control().getDisplay().getFocusControl();
        while (control != null && control != area) {
            control = control.getParent();
        }
        return control == area;
    }

    @PreDestroy
    void end() {
        subscriptions.forEach(Subscription::close);
        following.ifPresent(Subscription::close);
    }
}
