// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.OpenRecord.Acceptor;
import garboard.session.entry.EntryReader;
import garboard.session.verdicts.AcceptanceDraft;
import garboard.session.verdicts.AcceptanceDraft.Fault;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** Asks who takes responsibility for a shortfall, why and until when, and says what that does and does not do. */
final class AcceptDialog extends PlainDialog {

    private static final int REASON_LINES = 4;

    private final Verdict verdict;
    private final Texts.Of texts;
    private final EntryReader reader;
    private final LocalDate today;
    private Text name;
    private Text reason;
    private Text until;
    private Label faults;
    private Optional<Acceptor> answer = Optional.empty();

    AcceptDialog(Shell parent, Desk desk, Verdict verdict) {
        super(parent, desk, "accept");
        this.verdict = verdict;
        this.texts = desk.texts(AcceptDialog.class);
        this.reader = new EntryReader(desk.settings().units(), desk.labels(), desk.clock());
        this.today = LocalDate.now(desk.clock());
    }

    /** Shows it. @return who accepts, when the person did not think better of it */
    Optional<Acceptor> ask() {
        open();
        return answer;
    }

    @Override
    protected String title() {
        return texts.get("accept.title");
    }

    @Override
    protected void fill(Composite area) {
        Label lead = text(area, verdict.check().title());
        Lettering.heading(lead, 115);
        text(area, texts.get(isLaw() ? "accept.law" : "accept.lead"));
        var form = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(Lettering.width(area, 1.5), Lettering.height(area, 0.4)).applyTo(form);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        name = field(form, "name", SWT.BORDER);
        name.setText(desk().settings().acceptor());
        reason = field(form, "reason", SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, Lettering.height(reason, REASON_LINES)).applyTo(reason);
        // Tab leaves the field; who wants one can paste it.
        reason.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        until = field(form, "until", SWT.BORDER);
        until.setMessage(texts.get("accept.until.hint"));
        text(area, texts.get("accept.on", today));
        faults = text(area, "");
        faults.setData("garboard.id", "accept.faults");
        faults.setForeground(desk().palette().of(Standing.FALLS_SHORT));
        ((GridData) faults.getLayoutData()).heightHint = Lettering.height(faults, 2);
        (name.getText().isEmpty() ? name : reason).setFocus();
    }

    private Text field(Composite form, String key, int style) {
        var label = new Label(form, SWT.NONE);
        label.setText(texts.get("accept." + key));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, (style & SWT.MULTI) == 0 ? SWT.CENTER : SWT.BEGINNING).applyTo(label);
        var text = new Text(form, style);
        text.setData("garboard.id", "accept." + key);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        return text;
    }

    private boolean isLaw() {
        return verdict.check().basis().isRegulation();
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.OK_ID, "ok", texts.get(isLaw() ? "accept.ok.law" : "accept.ok"), true);
        button(row, IDialogConstants.CANCEL_ID, "cancel", texts.get("accept.cancel"), false);
    }

    @Override
    protected void okPressed() {
        var draft = new AcceptanceDraft(name.getText(), reason.getText(), until.getText(), today);
        var found = draft.faults(reader);
        if (!found.isEmpty()) {
            faults.setText(found.stream().map(fault -> texts.get("fault." + fault.name())).collect(Collectors.joining("\n")));
            show(found.iterator().next()).setFocus();
            return;
        }
        answer = Optional.of(draft.acceptor(reader));
        desk().settings().rememberAcceptor(answer.get().name());
        super.okPressed();
    }

    private Text show(Fault fault) {
        return switch (fault) {
            case NO_NAME -> name;
            case NO_REASON -> reason;
            case UNTIL_UNREADABLE, UNTIL_PAST -> until;
        };
    }
}
