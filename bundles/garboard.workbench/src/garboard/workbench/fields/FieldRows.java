// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.model.FieldText;
import garboard.model.FieldTextException;
import garboard.session.Field;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.RecordChange;
import garboard.session.Typing;
import garboard.workbench.Desk;

/**
 * Fields below each other, each with what it is called, an editor, the converted value and what is wrong with it. The rows follow the
 * record: what is undone, mended or dragged elsewhere stands there at once.
 */
public final class FieldRows {

    private record Row(Field field, Text text) {
    }

    private final OpenRecord record;
    private final Desk desk;
    private final Composite area;
    private final List<Row> rows = new ArrayList<>();
    private final Subscription edits;

    /** Makes an empty sheet of rows inside the parent, which gives it its place (see {@link #control}). */
    public FieldRows(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(area);
        edits = record.edits().onChange(this::follow);
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
        GridDataFactory.fillDefaults().span(2, 1).applyTo(label);
        return this;
    }

    /** Adds a row for a field. */
    public FieldRows field(Field field) {
        new Label(area, SWT.NONE).setText(desk.labels().label(field.attribute()));
        var text = new Text(area, SWT.BORDER);
        text.setData("garboard.id", "field:" + field.key());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        var row = new Row(field, text);
        rows.add(row);
        show(row);
        Typing typing = record.edits().typing(field, desk.labels().label(field.attribute()));
        text.addListener(SWT.KeyUp, event -> type(typing, text.getText()));
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

    /** Adds rows for fields below the record, each over a path of its own. */
    public FieldRows field(EObject anchor, EStructuralFeature... path) {
        return field(Field.of(anchor, path));
    }

    private void type(Typing typing, String text) {
        if (text.isBlank()) {
            typing.clear();
            return;
        }
        try {
            FieldText.value(typing.field().attribute().getEAttributeType(), text).ifPresent(typing::enter);
        } catch (FieldTextException refused) {
            typing.leaveUnread(text);
        }
    }

    private void follow(RecordChange change) {
        rows.stream().filter(row -> change.concerns(row.field)).forEach(this::show);
    }

    private void show(Row row) {
        String now = record.edits().unread(row.field).or(() -> row.field.value()
            .map(value -> FieldText.text(row.field.attribute().getEAttributeType(), value))).orElse("");
        if (!row.text.getText().equals(now)) {
            row.text.setText(now);
        }
    }

    /** Gives a field the focus and brings it into view. @return whether it is among these rows */
    public boolean reveal(String key) {
        return rows.stream().filter(row -> row.field.key().equals(key)).findFirst().map(row -> row.text.setFocus()).isPresent();
    }

    /** Gives the first row the focus. */
    public void setFocus() {
        rows.stream().findFirst().ifPresent(row -> row.text.setFocus());
    }

    /** Ends following the record. Happens by itself when the control is disposed. */
    public void close() {
        edits.close();
    }
}
