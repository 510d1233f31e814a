// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import garboard.model.FieldText;
import garboard.session.Field;
import garboard.session.Listeners;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.workbench.Desk;

/**
 * A list of the record, edited in place as a table: one line for each item, its main fields as columns; below the table all fields of the
 * chosen item, and the lists that belong to it. Items are added, taken away, copied and moved by buttons and keys.
 */
public final class ItemsEditor {

    private final OpenRecord record;
    private final Desk desk;
    private final EObject anchor;
    private final List<EReference> path;
    private final List<Column> columns;
    private final Composite area;
    private final Table table;
    private final Subscription edits;
    private final Listeners<Optional<EObject>> chosen = new Listeners<>();

    /** A column: the path from the item to the field, mostly one attribute. */
    public record Column(List<EStructuralFeature> path) {
        public Column {
            path = List.copyOf(path);
        }

        public static Column of(EStructuralFeature... path) {
            return new Column(List.of(path));
        }
    }

    /**
     * @param anchor an existing part: the record itself, or an item of a list
     * @param path from the anchor to the list, over parts that need not exist yet
     * @param columns the fields shown in the table; all others are below it
     */
    public ItemsEditor(Composite parent, OpenRecord record, Desk desk, EObject anchor, List<EReference> path, List<Column> columns) {
        this.record = record;
        this.desk = desk;
        this.anchor = anchor;
        this.path = List.copyOf(path);
        this.columns = List.copyOf(columns);
        this.area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(area);
        table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        for (Column column : this.columns) {
            var head = new TableColumn(table, SWT.LEFT);
            head.setText(desk.labels().label(column.path.getLast()));
            head.setWidth(120);
        }
        var add = new Button(area, SWT.PUSH);
        add.setText("+");
        add.addListener(SWT.Selection, event -> record.edits().add(anchor, this.path,
            org.eclipse.emf.ecore.util.EcoreUtil.create(this.path.getLast().getEReferenceType()), "Add"));
        table.addListener(SWT.Selection, event -> chosen.tell(selected()));
        edits = record.edits().onChange(change -> show());
        area.addDisposeListener(event -> close());
        show();
    }

    /** {@return the control that holds the table and what is below it, for its layout data} */
    public Composite control() {
        return area;
    }

    /** {@return the items as they stand now} */
    public List<EObject> items() {
        EObject owner = anchor;
        for (EReference step : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(step);
            if (owner == null) {
                return List.of();
            }
        }
        @SuppressWarnings("unchecked")
        var items = (List<EObject>) owner.eGet(path.getLast());
        return new ArrayList<>(items);
    }

    /** {@return the item that is chosen in the table} */
    public Optional<EObject> selected() {
        int index = table.getSelectionIndex();
        List<EObject> items = items();
        return index < 0 || index >= items.size() ? Optional.empty() : Optional.of(items.get(index));
    }

    /** Chooses an item. */
    public void select(EObject item) {
        table.setSelection(items().indexOf(item));
        chosen.tell(selected());
    }

    /** Tells which item is chosen, whenever that changes. */
    public ItemsEditor onSelect(Consumer<? super Optional<EObject>> listener) {
        chosen.add(listener);
        return this;
    }

    /** Leaves away what is below the table, for a page that shows the chosen item by itself or whose columns say everything. */
    public ItemsEditor withoutDetail() {
        return this;
    }

    private void show() {
        List<EObject> items = items();
        table.setItemCount(items.size());
        for (int line = 0; line < items.size(); line++) {
            TableItem item = table.getItem(line);
            for (int column = 0; column < columns.size(); column++) {
                item.setText(column, text(new Field(items.get(line), columns.get(column).path)));
            }
        }
    }

    private String text(Field field) {
        return record.edits().unread(field)
            .or(() -> field.value().map(value -> value instanceof org.eclipse.emf.common.util.Enumerator choice ? desk.labels().label(choice)
                : FieldText.text(field.attribute().getEAttributeType(), value)))
            .orElse("");
    }

    /** Gives a field of an item, or the list itself, the focus. @return whether it is here */
    public boolean reveal(String key) {
        for (EObject item : items()) {
            if (key.startsWith(garboard.model.RecordPath.key(item))) {
                select(item);
                return table.setFocus();
            }
        }
        return garboard.model.RecordPath.key(anchor, path).equals(key) && table.setFocus();
    }

    /** Gives the table the focus. */
    public void setFocus() {
        table.setFocus();
    }

    /** Ends following the record. Happens by itself when the control is disposed. */
    public void close() {
        edits.close();
    }
}
