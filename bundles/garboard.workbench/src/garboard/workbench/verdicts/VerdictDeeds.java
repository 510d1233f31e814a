// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;
import garboard.session.verdicts.Inputs;
import garboard.session.verdicts.RemedyOutcome;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** What a person can do about the chosen verdict: go to its field, apply its remedy, accept it or withdraw the acceptance. */
final class VerdictDeeds {

    private final Desk desk;
    private final Texts.Of texts;
    private final Consumer<RemedyOutcome> applied;
    private final Composite row;
    private final Button go;
    private final Button apply;
    private final Button accept;
    private Optional<OpenRecord> record = Optional.empty();
    private Optional<Verdict> verdict = Optional.empty();

    /** @param applied told what a remedy did */
    VerdictDeeds(Composite parent, Desk desk, Consumer<RemedyOutcome> applied) {
        this.desk = desk;
        this.texts = desk.texts(VerdictDeeds.class);
        this.applied = applied;
        row = new Composite(parent, SWT.NONE);
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = Lettering.width(row, 1);
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(Lettering.width(row, 20), SWT.DEFAULT).applyTo(row);
        go = button("verdicts.go", "go", this::go);
        apply = button("verdicts.apply", "apply", this::apply);
        accept = button("verdicts.accept", "accept", this::acceptOrWithdraw);
    }

    private Button button(String id, String key, Runnable deed) {
        var button = new Button(row, SWT.PUSH);
        button.setData("garboard.id", id);
        button.setText(texts.get(key));
        button.setToolTipText(texts.get(key + ".tip"));
        button.addListener(SWT.Selection, event -> deed.run());
        button.setLayoutData(new RowData());
        return button;
    }

    /** Lets the keys of these deeds hold in a control. */
    void keysIn(Control control) {
        control.addListener(SWT.KeyDown, this::key);
    }

    private void key(Event event) {
        boolean enter = event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR;
        if (enter && event.stateMask == SWT.MOD1) {
            apply();
            event.doit = false;
        } else if (event.keyCode == 'a' && event.stateMask == (SWT.MOD1 | SWT.MOD2)) {
            acceptOrWithdraw();
            event.doit = false;
        } else if (enter && event.stateMask == 0) {
            go();
            event.doit = false;
        }
    }

    void show(Optional<OpenRecord> ofRecord, Optional<Verdict> chosen) {
        record = ofRecord;
        verdict = chosen;
        boolean remedied = chosen.flatMap(Verdict::remedy).filter(remedy -> !remedy.changes().isEmpty()).isPresent();
        boolean accepted = isAccepted();
        go.setEnabled(chosen.isPresent());
        turn(apply, remedied);
        turn(accept, accepted || chosen.filter(VerdictDeeds::mayBeAccepted).isPresent());
        String key = accepted ? "withdraw" : "accept";
        if (!texts.get(key).equals(accept.getText())) {
            accept.setText(texts.get(key));
            accept.setToolTipText(texts.get(key + ".tip"));
            row.requestLayout();
        }
    }

    private void turn(Button button, boolean on) {
        var data = (RowData) button.getLayoutData();
        if (data.exclude == on || button.getVisible() != on) {
            data.exclude = !on;
            button.setVisible(on);
            row.requestLayout();
        }
    }

    private static boolean mayBeAccepted(Verdict verdict) {
        return verdict.standing() == Standing.FALLS_SHORT || verdict.standing() == Standing.BORDERLINE;
    }

    private boolean isAccepted() {
        return record.isPresent() && verdict.filter(one -> !record.get().acceptances(one).isEmpty()).isPresent();
    }

    /** Goes to the field where to begin. */
    void go() {
        verdict.ifPresent(one -> desk.goTo(Inputs.target(one)));
    }

    private void apply() {
        if (record.isPresent() && apply.getVisible()) {
            Verdict mended = verdict.orElseThrow();
            applied.accept(RemedyOutcome.apply(record.get(), mended, texts.get("step.remedy", mended.check().title())));
        }
    }

    private void acceptOrWithdraw() {
        if (!accept.getVisible()) {
            return;
        }
        Verdict one = verdict.orElseThrow();
        if (isAccepted()) {
            record.orElseThrow().withdraw(one, texts.get("step.withdraw", one.check().title()));
        } else {
            new AcceptDialog(row.getShell(), desk, one).ask()
                .ifPresent(acceptor -> record.orElseThrow().accept(one, acceptor, texts.get("step.accept", one.check().title())));
        }
    }
}
