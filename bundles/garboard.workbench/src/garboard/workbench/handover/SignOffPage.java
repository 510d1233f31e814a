// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.handover.SignOff;
import garboard.workbench.Desk;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.look.Lettering;
import garboard.workbench.page.Page;
import garboard.workbench.page.PageTitle;
import garboard.workbench.text.Texts;

/** What still stands between the record and a signature, the signatures, and the report that is handed over. */
public final class SignOffPage implements Page {

    private static final int LEAD = 115;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private SheetScroll sheet;
    private Tint tint;
    private Label lead;
    private OpenPointsView points;
    private SignaturesView signatures;
    private SigningView signing;
    private Label written;
    private Button openReport;
    private List<Subscription> subscriptions = List.of();
    private Optional<SignOff> shown = Optional.empty();
    private boolean due;

    public SignOffPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(SignOffPage.class);
    }

    @Override
    public Control create(Composite parent) {
        sheet = new SheetScroll(parent, desk);
        sheet.control().setData("garboard.id", "page:" + Stop.SIGN_OFF.name());
        Composite content = sheet.content();
        tint = new Tint(content, desk);
        PageTitle.make(content, desk, Stop.SIGN_OFF);
        var head = Sheet.area(content, 1);
        lead = Sheet.words(head, "");
        lead.setData("garboard.id", "signoff.lead");
        Lettering.scale(lead, LEAD);
        Composite row = Sheet.row(head);
        Sheet.button(row, "signoff.toSigning", texts.get("page.sign"), () -> {
            sheet.show(signing.control());
            signing.setFocus();
        });
        Sheet.button(row, "signoff.report", texts.get("page.report"), () -> desk.perform("garboard.command.report"));
        Sheet.button(row, "signoff.form", texts.get("page.form"), () -> desk.perform("garboard.command.form"));
        points = new OpenPointsView(content, record, desk, tint);
        heading("signatures");
        signatures = new SignaturesView(content, record, desk, tint, line -> {
            sheet.show(signing.control());
            signing.begin(line);
        });
        heading("signing");
        signing = new SigningView(content, record, desk, tint, points.words(), () -> {
            signatures.forget();
            show();
        });
        heading("report");
        report(content);
        subscriptions = List.of(record.edits().onChange(change -> follow()), record.verdicts().onChange(evaluation -> follow()),
            desk.onReport(file -> showReport()), desk.settings().onChange(settings -> follow()));
        show();
        return sheet.control();
    }

    private void heading(String key) {
        var area = Sheet.area(sheet.content(), 1);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 0, Lettering.height(area, 0.8), 0).applyTo(area);
        String word = "heading." + key;
        Label heading = tint.accent(Sheet.words(area, texts.get(word)));
        Lettering.heading(heading, LEAD);
    }

    private void report(Composite content) {
        var area = Sheet.area(content, 1);
        tint.ink(Sheet.words(area, texts.get("report.about")));
        written = tint.faint(Sheet.words(area, ""));
        Composite row = Sheet.row(area);
        Sheet.button(row, "signoff.report.write", texts.get("page.report"), () -> desk.perform("garboard.command.report"));
        openReport = Sheet.button(row, "signoff.report.open", texts.get("report.open"), this::open);
        showReport();
    }

    private void showReport() {
        written.setText(desk.report().map(file -> texts.get("report.written", file)).orElse(texts.get("report.none")));
        openReport.setEnabled(desk.report().isPresent());
        written.requestLayout();
    }

    private void open() {
        desk.report().filter(file -> !Program.launch(file.toString())).ifPresent(file -> {
            written.setText(texts.get("export.noProgram", file));
            written.requestLayout();
        });
    }

    /** One edit tells twice, as a change of the record and of the verdicts; it is shown once, and only while somebody looks. */
    private void follow() {
        if (!due && sheet.control().isVisible()) {
            due = true;
            sheet.control().getDisplay().asyncExec(() -> {
                due = false;
                if (!sheet.control().isDisposed()) {
                    show();
                }
            });
        }
    }

    private void show() {
        SignOff now = SignOff.of(record, desk.clock());
        signatures.show();
        if (!shown.filter(now::equals).isPresent()) {
            shown = Optional.of(now);
            points.show(now);
        }
        signing.show(now);
        lead.setText(lead(now).replace("&", "&&"));
        tint.with(lead, palette -> palette.of(now.isBarred() ? Standing.CHECK_BROKE : now.isClear() ? Standing.MEETS : Standing.FALLS_SHORT));
        lead.requestLayout();
    }

    private String lead(SignOff now) {
        String standing = now.isBarred() ? texts.get("lead.barred") : now.isClear() ? texts.get("lead.clear")
            : texts.get("lead.open", points.words().counts(now));
        return signatures.changedSince() ? standing + " " + texts.get("lead.changed", signatures.changedSinceWhose()) : standing;
    }

    @Override
    public void shown() {
        show();
    }

    @Override
    public boolean reveal(String key) {
        boolean here = key.startsWith("signatures");
        if (here) {
            sheet.show(signing.control());
        }
        return here;
    }

    @Override
    public void setFocus() {
        sheet.content().setFocus();
    }

    @Override
    public void close() {
        subscriptions.forEach(Subscription::close);
    }
}
