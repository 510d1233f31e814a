// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.time.LocalDate;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.model.GarboardPackage.Literals;
import garboard.report.UsualUpkeep;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.handover.DueTask;
import garboard.session.handover.UpkeepPlan;
import garboard.session.handover.UsualWords;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldHelp;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.fields.ItemsEditor;
import garboard.workbench.fields.ItemsEditor.Column;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.look.Lettering;
import garboard.workbench.page.Page;
import garboard.workbench.page.PageTitle;
import garboard.workbench.text.Texts;

/** The plan of the upkeep: what is due next, the tasks and consumables edited in place, the usual tasks to take over. */
public final class UpkeepPage implements Page {

    private static final int HEADING = 110;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final DueWords words;
    private final UsualWords usualWords;
    private Composite page;
    private Tint tint;
    private Composite content;
    private NextTasks next;
    private FieldRows rows;
    private ItemsEditor tasks;
    private ItemsEditor consumables;
    private Button usual;
    private List<Subscription> subscriptions = List.of();
    private boolean due;

    public UpkeepPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(UpkeepPage.class);
        this.words = new DueWords(desk);
        this.usualWords = UsualWords.in(desk.texts().locale());
    }

    @Override
    public Control create(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        page.setData("garboard.id", "page:" + Stop.UPKEEP.name());
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        var sheet = new SheetScroll(page, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        content = sheet.content();
        tint = new Tint(page, desk);
        PageTitle.make(content, desk, Stop.UPKEEP);
        next = new NextTasks(content, record, desk, tint, words, this::reveal);
        rows = new FieldRows(content, record, desk).field(record.record(), Literals.COMMISSIONING_RECORD__UPKEEP, Literals.UPKEEP__ANNUAL_HOURS)
            .field(record.record(), Literals.COMMISSIONING_RECORD__GENERATOR_SET, Literals.GENERATOR_SET__HOUR_METER);
        heading("upkeep.tasks");
        tasks = new ItemsEditor(content, record, desk, record.record(), List.of(Literals.COMMISSIONING_RECORD__UPKEEP, Literals.UPKEEP__TASKS),
            List.of(Column.of(Literals.UPKEEP_TASK__TASK), Column.of(Literals.UPKEEP_TASK__EVERY_HOURS), Column.of(Literals.UPKEEP_TASK__EVERY_MONTHS),
                Column.of(Literals.UPKEEP_TASK__LAST_DONE_ON), Column.reckoned(texts.get("upkeep.next"), this::next)));
        var area = Sheet.area(content, 1);
        Composite row = Sheet.row(area);
        usual = Sheet.button(row, "upkeep.usual", texts.get("upkeep.usual"), this::takeUsual);
        tint.faint(Sheet.words(area, texts.get("upkeep.usual.about")));
        heading("upkeep.impeller");
        tint.ink(Sheet.words(Sheet.area(content, 1), texts.get("upkeep.impeller.rule")));
        heading("upkeep.consumables");
        consumables = new ItemsEditor(content, record, desk, record.record(),
            List.of(Literals.COMMISSIONING_RECORD__UPKEEP, Literals.UPKEEP__CONSUMABLES));
        var help = new FieldHelp(page, record, desk, content);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(help.control());
        subscriptions = List.of(record.edits().onChange(change -> follow()));
        show();
        return page;
    }

    private void heading(String key) {
        var area = Sheet.area(content, 1);
        Label heading = tint.accent(Sheet.words(area, texts.get(key)));
        Lettering.heading(heading, HEADING);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 0, Lettering.height(area, 0.6), 0).applyTo(area);
    }

    private LocalDate today() {
        return LocalDate.now(desk.clock());
    }

    private String next(EObject item) {
        return UpkeepPlan.due(record.record(), today()).stream().filter(one -> one.task() == item).findFirst().map(words::due).orElse("");
    }

    private void takeUsual() {
        List<UsualUpkeep.Task> lacking = UpkeepPlan.lacking(record.record(), usualWords::of);
        var dialog = new UsualTasksDialog(page.getShell(), desk, lacking, usualWords::of);
        List<UsualUpkeep.Task> chosen = dialog.ask();
        if (!chosen.isEmpty()) {
            UpkeepPlan.take(record, chosen, usualWords::of, texts.get("upkeep.usual.note"), texts.get("step.usual"));
        }
    }

    private void follow() {
        if (!due && page.isVisible()) {
            due = true;
            page.getDisplay().asyncExec(() -> {
                due = false;
                if (!page.isDisposed()) {
                    show();
                }
            });
        }
    }

    private void show() {
        List<DueTask> all = UpkeepPlan.due(record.record(), today());
        next.show(all);
        usual.setEnabled(!UpkeepPlan.lacking(record.record(), usualWords::of).isEmpty());
    }

    @Override
    public void shown() {
        show();
    }

    @Override
    public boolean reveal(String key) {
        return tasks.reveal(key) || consumables.reveal(key) || rows.reveal(key);
    }

    @Override
    public void setFocus() {
        tasks.setFocus();
    }

    @Override
    public void close() {
        subscriptions.forEach(Subscription::close);
    }
}
