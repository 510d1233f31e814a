// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.model.GarboardPackage.Literals;
import garboard.session.Field;
import garboard.session.FieldStandings;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.RecordChange;
import garboard.session.form.FormEntry;
import garboard.session.form.FormGroup;
import garboard.workbench.Desk;

/**
 * Fields below each other, each with what it is called, an editor, the converted value, how it stands, and what is wrong with it. The rows
 * follow the record: what is undone, mended or dragged elsewhere stands there at once. A sheet that cannot be seen is brought up to date
 * when it can.
 */
public final class FieldRows {

    private final FieldContext context;
    private final Composite area;
    private final List<Line> lines = new ArrayList<>();
    private final List<FieldRow> rows = new ArrayList<>();
    private final List<TitleLine> titles = new ArrayList<>();
    private final List<ItemsEditor> lists = new ArrayList<>();
    private final List<Label> headings = new ArrayList<>();
    private final List<Subscription> subscriptions = new ArrayList<>();
    private final LocalResourceManager resources;
    private boolean behind;

    /** Makes an empty sheet of rows inside the parent, which gives it its place (see {@link #control}). */
    public FieldRows(Composite parent, OpenRecord record, Desk desk) {
        context = new FieldContext(record, desk);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new RowsLayout(lines));
        resources = new LocalResourceManager(JFaceResources.getResources(), area);
        subscriptions.add(record.edits().onChange(this::follow));
        subscriptions.add(record.verdicts().onChange(evaluation -> judge()));
        subscriptions.add(desk.settings().onChange(settings -> rows.forEach(FieldRow::show)));
        subscriptions.add(desk.onPalette(palette -> colour()));
        area.addListener(SWT.Paint, event -> {
            rows.forEach(row -> row.mark().paint(event.gc));
            catchUp();
        });
        area.addListener(SWT.MouseMove, event -> tip(event.x, event.y));
        area.addDisposeListener(event -> close());
    }

    /** {@return the control that holds the rows, for its layout data} */
    public Composite control() {
        return area;
    }

    /** Sets a heading above the rows that follow. */
    public FieldRows heading(String words) {
        var label = new Label(area, SWT.NONE);
        label.setText(words);
        label.setFont(resources.create(FontDescriptor.createFrom(area.getFont()).setStyle(SWT.BOLD)));
        label.setForeground(context.desk().palette().accent());
        headings.add(label);
        int letter = label.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        lines.add(new Line.Wide(label, letter, lines.isEmpty() ? 0 : letter / 2));
        return this;
    }

    /** Adds a row for a field. */
    public FieldRows field(Field field) {
        return row(context.name(field), (parent, changed) -> editor(parent, field, changed));
    }

    /** Adds a field whose text stands as a heading, over several lines where it must, and is written over in place. */
    public FieldRows title(Field field) {
        var title = new TitleLine(area, field, context, resources);
        titles.add(title);
        lines.add(title);
        return this;
    }

    /** Adds a row for each field. */
    public FieldRows fields(Collection<Field> fields) {
        fields.forEach(this::field);
        return this;
    }

    /** Adds a row for each of some fields of a part that exists. */
    public FieldRows fields(EObject owner, EAttribute... attributes) {
        for (EAttribute attribute : attributes) {
            field(Field.of(owner, attribute));
        }
        return this;
    }

    /** Adds a row for a field over a path, from an anchor that exists. */
    public FieldRows field(EObject anchor, EStructuralFeature... path) {
        return field(Field.of(anchor, path));
    }

    /** Adds a row for a place on the boat, its three figures side by side. @param path from the anchor to the point */
    public FieldRows place(EObject anchor, List<EReference> path) {
        List<Field> figures = new FormEntry.Place(path).figures().stream().map(figure -> new Field(anchor, figure)).toList();
        return row(context.desk().labels().label(path.getLast()), (parent, changed) -> new PlaceEditor(parent, figures, context, changed));
    }

    /** Adds a list, edited in place. @param path from the anchor to the list */
    public FieldRows items(EObject anchor, List<EReference> path) {
        var items = new ItemsEditor(area, context.record(), context.desk(), anchor, path);
        lists.add(items);
        lines.add(new Line.Wide(items.control(), 0, 0));
        return this;
    }

    /** Adds the lines of a group. @param anchor the record, or the item that the group is of */
    public FieldRows group(FormGroup group, EObject anchor) {
        for (FormEntry entry : group.entries()) {
            switch (entry) {
                case FormEntry.One one -> field(new Field(anchor, one.path()));
                case FormEntry.Place place -> place(anchor, place.path());
                case FormEntry.Items items -> items(anchor, items.path());
                case FormEntry.Under under -> heading(context.desk().labels().label(under.part()));
            }
        }
        return this;
    }

    /** Adds something else as wide as the sheet. */
    public FieldRows wide(Function<Composite, Control> maker) {
        lines.add(new Line.Wide(maker.apply(area), 0, 0));
        return this;
    }

    private FieldRows row(String called, FieldRow.Maker maker) {
        var row = new FieldRow(area, context, called, maker);
        row.judge(context.record().verdicts().byField());
        rows.add(row);
        lines.add(row);
        return this;
    }

    private Editor editor(Composite parent, Field field, Runnable changed) {
        if (field.attribute() == Literals.COMMISSIONING_RECORD__PRACTICES) {
            return new PracticesEditor(parent, field, context, changed);
        }
        if (field.attribute().getEAttributeType() == Literals.ANSWER) {
            return new AnswerEditor(parent, field, context, changed);
        }
        return field.attribute().getEAttributeType() instanceof EEnum ? new ChoiceEditor(parent, field, context, changed)
            : new TextEditor(parent, field, context, changed);
    }

    private void follow(RecordChange change) {
        if (!area.isVisible()) {
            behind = true;
            return;
        }
        for (FieldRow row : rows) {
            if (row.editor().fields().stream().anyMatch(change::concerns)) {
                row.show();
            }
        }
        titles.stream().filter(title -> change.concerns(title.field())).forEach(TitleLine::show);
    }

    private void judge() {
        if (!area.isVisible()) {
            behind = true;
            return;
        }
        FieldStandings standings = context.record().verdicts().byField();
        rows.forEach(row -> row.judge(standings));
    }

    private void catchUp() {
        if (behind) {
            behind = false;
            // Not while it is painted: a label that changes asks to be painted again.
            area.getDisplay().asyncExec(() -> {
                if (!area.isDisposed()) {
                    rows.forEach(FieldRow::show);
                    titles.forEach(TitleLine::show);
                    judge();
                }
            });
        }
    }

    private void tip(int x, int y) {
        String tip = rows.stream().map(FieldRow::mark).filter(mark -> mark.bounds().contains(x, y)).findFirst().map(StandingMark::tip).orElse("");
        String now = tip.isEmpty() ? null : tip;
        if (!java.util.Objects.equals(area.getToolTipText(), now)) {
            area.setToolTipText(now);
        }
    }

    private void colour() {
        area.redraw();
        headings.forEach(label -> label.setForeground(context.desk().palette().accent()));
        rows.forEach(FieldRow::colour);
        titles.forEach(TitleLine::colour);
    }

    /** {@return whether all fields here are beside the matter for this installation} */
    public boolean isQuiet() {
        return !rows.isEmpty() && lists.isEmpty() && rows.stream().allMatch(FieldRow::isQuiet);
    }

    /** Gives a field the focus, or the first field of a part, or an item of a list. @return whether it is among these rows */
    public boolean reveal(String key) {
        return titles.stream().anyMatch(title -> title.reveal(key)) || rows.stream().anyMatch(row -> row.reveal(key))
            || lists.stream().anyMatch(list -> list.reveal(key));
    }

    /** Gives the first row the focus. */
    public void setFocus() {
        Optional<FieldRow> first = rows.stream().findFirst();
        first.ifPresentOrElse(row -> row.editor().setFocus(row.editor().fields().getFirst()),
            () -> lists.stream().findFirst().ifPresent(ItemsEditor::setFocus));
    }

    /** Ends following the record. Happens by itself when the control is disposed. */
    public void close() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
    }
}
