// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardPackage.Literals;
import garboard.model.SeacockState;
import garboard.quantity.TimeSpan;
import garboard.session.Field;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.trial.AttemptWatch;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The stop-watch: how the seacock stands, starter on, starter off, fired, drained. */
final class WatchBar {

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final AttemptWatch watch;
    private final Runnable begun;
    private final Map<SeacockState, Button> seacock = new EnumMap<>(SeacockState.class);
    private final Button start;
    private final Button off;
    private final Button fired;
    private final Button drained;
    private final Label time;
    private boolean wasRunning;

    WatchBar(Composite parent, Desk desk, OpenRecord record, AttemptWatch watch, Runnable begun) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(WatchBar.class);
        this.watch = watch;
        this.begun = begun;
        var area = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(parent, 1.5)).center(true).applyTo(area);
        var valve = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(parent, 1)).center(true).applyTo(valve);
        label(valve, desk.labels().label(Literals.CRANKING_ATTEMPT__SEACOCK));
        for (SeacockState state : new SeacockState[] {SeacockState.OPEN, SeacockState.SHUT}) {
            var button = new Button(valve, SWT.RADIO);
            button.setText(desk.labels().label(state));
            button.setData("garboard.id", "crank.seacock." + state.name());
            button.addListener(SWT.Selection, event -> turned(button, state));
            seacock.put(state, button);
        }
        start = button(area, "start", this::start);
        off = button(area, "off", () -> stop(Answer.NO));
        fired = button(area, "fired", () -> stop(Answer.YES));
        time = label(area, texts.get("crank.time", "00.0"));
        Lettering.heading(time, 150);
        time.setLayoutData(new RowData(time.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + Lettering.width(parent, 2), SWT.DEFAULT));
        drained = button(area, "drained", this::drain);
    }

    private Label label(Composite parent, String words) {
        var label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setForeground(desk.palette().ink());
        Subscription palette = desk.onPalette(now -> label.setForeground(now.ink()));
        label.addDisposeListener(event -> palette.close());
        return label;
    }

    private Button button(Composite parent, String what, Runnable action) {
        var button = new Button(parent, SWT.PUSH);
        button.setText(texts.get("crank." + what));
        button.setToolTipText(texts.get("crank." + what + ".tip"));
        button.setData("garboard.id", "crank." + what);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** The seacock may be turned while the starter turns: then the try is told as open, since water came. */
    private void turned(Button button, SeacockState state) {
        if (button.getSelection() && state == SeacockState.OPEN) {
            watch.running().filter(now -> now.attempt().getSeacock() != state)
                .ifPresent(now -> record.edits().set(Field.of(now.attempt(), Literals.CRANKING_ATTEMPT__SEACOCK), state, texts.get("crank.undo.seacock")));
        }
    }

    private void start() {
        SeacockState state = seacock.entrySet().stream().filter(entry -> entry.getValue().getSelection()).map(Map.Entry::getKey).findFirst()
            .orElse(SeacockState.NOT_ENTERED);
        watch.start(state, texts.get("crank.undo.start"));
        begun.run();
        off.setFocus();
    }

    private void stop(Answer answer) {
        watch.stop(answer, texts.get("crank.undo.stop"));
        start.setFocus();
    }

    private void drain() {
        last.ifPresent(attempt -> record.edits().set(Field.of(attempt, Literals.CRANKING_ATTEMPT__MUFFLER_DRAINED), Answer.YES,
            texts.get("crank.undo.drained")));
    }

    private Optional<CrankingAttempt> last = Optional.empty();

    void show(Optional<AttemptWatch.Running> running, Optional<CrankingAttempt> lastAttempt) {
        boolean first = last.isEmpty() && lastAttempt.isPresent();
        last = lastAttempt;
        if (first && seacock.values().stream().noneMatch(Button::getSelection)) {
            Optional.ofNullable(seacock.get(lastAttempt.get().getSeacock())).ifPresent(button -> button.setSelection(true));
        }
        boolean runs = running.isPresent();
        start.setEnabled(!runs);
        off.setEnabled(runs);
        fired.setEnabled(runs);
        drained.setEnabled(!runs && lastAttempt.filter(attempt -> attempt.getMufflerDrained() != Answer.YES && attempt.getFired() != Answer.YES).isPresent());
        wasRunning = runs || wasRunning;
        Optional<TimeSpan> told = running.map(AttemptWatch.Running::sofar).or(() -> lastAttempt.filter(attempt -> wasRunning).map(CrankingAttempt::getDuration));
        time.setText(told.map(span -> texts.get("crank.time", span.givenNumber())).orElse(""));
    }

    void setFocus() {
        start.setFocus();
    }
}
