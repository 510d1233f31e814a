// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

import garboard.model.RecordPath;
import garboard.session.Field;
import garboard.session.Listeners;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.RecordChange;
import garboard.session.form.ItemList;
import garboard.workbench.Desk;

/**
 * A list of the record, edited in place as a table: one line for each item, its main fields as columns; below the table all fields of the
 * chosen item, and the lists that belong to it. Items are added, taken away, copied and moved by buttons and keys.
 */
public final class ItemsEditor {

    private final FieldContext context;
    private final ItemList list;
    private final Composite area;
    private final ItemTable table;
    private final CellEditing cells;
    private final ItemButtons buttons;
    private final CellMessage message;
    private final ItemDetail detail;
    private final List<Subscription> subscriptions;
    private final Listeners<Optional<EObject>> chosen = new Listeners<>();
    private Supplier<EObject> maker;
    private boolean behind;

    /**
     * A column: the path from the item to the field, mostly one attribute; or something that is reckoned from the item and cannot be filled in.
     *
     * @param path empty where the column is reckoned
     */
    public record Column(List<EStructuralFeature> path, Optional<Reckoned> reckoned) {

        /** What is reckoned from an item, and what it is called. */
        public record Reckoned(String heading, Function<? super EObject, String> text) {
        }

        public Column {
            path = List.copyOf(path);
        }

        public Column(List<EStructuralFeature> path) {
            this(path, Optional.empty());
        }

        public static Column of(EStructuralFeature... path) {
            return new Column(List.of(path));
        }

        public static Column reckoned(String heading, Function<? super EObject, String> text) {
            return new Column(List.of(), Optional.of(new Reckoned(heading, text)));
        }

        EAttribute attribute() {
            return (EAttribute) path.getLast();
        }
    }

    /**
     * Shows the columns that the form has for such items.
     *
     * @param anchor an existing part: the record itself, or an item of a list
     * @param path from the anchor to the list, over parts that need not exist yet
     */
    public ItemsEditor(Composite parent, OpenRecord record, Desk desk, EObject anchor, List<EReference> path) {
        this(parent, record, desk, anchor, path,
            desk.form().of(path.getLast().getEReferenceType()).columns().stream().map(Column::new).toList());
    }

    /**
     * @param anchor an existing part: the record itself, or an item of a list
     * @param path from the anchor to the list, over parts that need not exist yet
     * @param columns the fields shown in the table; all others are below it
     */
    public ItemsEditor(Composite parent, OpenRecord record, Desk desk, EObject anchor, List<EReference> path, List<Column> columns) {
        this.context = new FieldContext(record, desk);
        this.list = new ItemList(record.edits(), anchor, path);
        this.maker = () -> EcoreUtil.create(list.type());
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        area.setData("garboard.id", "list:" + list.key());
        table = new ItemTable(area, context, List.copyOf(columns));
        table.control().setData("garboard.id", "table:" + list.key());
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(table.control());
        message = new CellMessage(area, context);
        cells = new CellEditing(table, context, message::tell);
        message.of(cells);
        buttons = new ItemButtons(area, context, this);
        detail = new ItemDetail(area, context, desk.form().of(list.type()));
        buttons.listenTo(table.control());
        buttons.listenTo(cells.control());
        cells.control().addListener(SWT.Selection, event -> choose());
        table.control().addListener(SWT.Selection, event -> choose());
        subscriptions = List.of(record.edits().onChange(this::follow), record.verdicts().onChange(evaluation -> table.judge()),
            desk.onPalette(palette -> colour()), desk.settings().onChange(settings -> show()));
        area.addListener(SWT.Paint, event -> catchUp());
        area.addDisposeListener(event -> close());
        show();
    }

    /** {@return the control that holds the table and what is below it, for its layout data} */
    public Composite control() {
        return area;
    }

    /** {@return the items as they stand now} */
    public List<EObject> items() {
        return list.items();
    }

    /** {@return the item that is chosen in the table} */
    public Optional<EObject> selected() {
        int index = table.control().getSelectionIndex();
        return index < 0 || index >= table.items().size() ? Optional.empty() : Optional.of(table.items().get(index));
    }

    /** Chooses an item. */
    public void select(EObject item) {
        int line = table.items().indexOf(item);
        if (line >= 0) {
            table.control().setSelection(line);
            choose();
        }
    }

    /** Tells which item is chosen, whenever that changes. */
    public ItemsEditor onSelect(Consumer<? super Optional<EObject>> listener) {
        chosen.add(listener);
        return this;
    }

    /** Leaves away what is below the table, for a page that shows the chosen item by itself or whose columns say everything. */
    public ItemsEditor withoutDetail() {
        detail.leaveAway();
        return this;
    }

    /** Makes new items other than empty, for example with the next number. */
    public ItemsEditor making(Supplier<EObject> newItem) {
        maker = newItem;
        return this;
    }

    // What the buttons do ---------------------------------------------------------------------------------------------

    void add() {
        goTo(list.add(maker.get(), step("add")));
    }

    void duplicate() {
        selected().ifPresent(item -> goTo(list.duplicate(item, step("duplicate"))));
    }

    void remove() {
        selected().ifPresent(item -> {
            int line = table.items().indexOf(item);
            cells.end();
            list.remove(item, step("remove"));
            if (!cells.goTo(Math.min(line, table.items().size() - 1), ItemTable.FIRST)) {
                table.control().setFocus();
            }
            choose();
        });
    }

    void move(int by) {
        selected().ifPresent(item -> {
            cells.end();
            if (list.move(item, by, step("move"))) {
                goTo(item);
            }
        });
    }

    private String step(String what) {
        return context.texts().get("step." + what, context.desk().labels().label(list.type()));
    }

    private void goTo(EObject item) {
        cells.goTo(table.items().indexOf(item), ItemTable.FIRST);
        choose();
    }

    // What follows the record -----------------------------------------------------------------------------------------

    private void choose() {
        detail.show(selected());
        buttons.follow(selected().map(table.items()::indexOf), table.items().size());
        chosen.tell(selected());
    }

    private void follow(RecordChange change) {
        if (!area.isVisible()) {
            behind = true;
        } else if (change.structural()) {
            show();
        } else {
            for (int line = 0; line < table.items().size(); line++) {
                EObject item = table.items().get(line);
                if (table.reckons() || change.touched().stream().anyMatch(one -> EcoreUtil.isAncestor(item, one.owner()))) {
                    table.showLine(line);
                }
            }
            cells.editor().ifPresent(Editor::show);
        }
    }

    private void catchUp() {
        if (behind) {
            behind = false;
            area.getDisplay().asyncExec(() -> {
                if (!area.isDisposed()) {
                    show();
                }
            });
        }
    }

    private void show() {
        List<EObject> now = items();
        Optional<EObject> before = selected();
        if (!now.equals(table.items())) {
            cells.end();
        }
        boolean resize = table.show(now);
        var place = (GridData) table.control().getLayoutData();
        if (resize || place.heightHint == SWT.DEFAULT) {
            place.heightHint = table.height();
            table.control().requestLayout();
        }
        before.filter(now::contains).ifPresent(item -> table.control().setSelection(now.indexOf(item)));
        cells.editor().ifPresent(Editor::show);
        if (!before.equals(selected())) {
            choose();
        }
        buttons.follow(selected().map(now::indexOf), now.size());
    }

    private void colour() {
        cells.colour();
        table.control().redraw();
    }

    /** Gives a field of an item, or the list itself, the focus. @return whether it is here */
    public boolean reveal(String key) {
        for (EObject item : table.items()) {
            String itemKey = RecordPath.key(item);
            if (key.equals(itemKey) || key.startsWith(itemKey + ".")) {
                select(item);
                return detail.reveal(key) || cells.goTo(table.items().indexOf(item), column(item, key));
            }
        }
        if (list.key().equals(key)) {
            setFocus();
            return true;
        }
        return false;
    }

    private int column(EObject item, String key) {
        for (int column = ItemTable.FIRST; column < table.control().getColumnCount(); column++) {
            Optional<Field> field = table.field(table.items().indexOf(item), column);
            if (field.filter(found -> found.key().equals(key)).isPresent()) {
                return column;
            }
        }
        return ItemTable.FIRST;
    }

    /** Gives the table the focus. */
    public void setFocus() {
        if (!cells.goTo(Math.max(0, table.control().getSelectionIndex()), ItemTable.FIRST)) {
            buttons.setFocus();
        }
    }

    /** Ends following the record. Happens by itself when the control is disposed. */
    public void close() {
        subscriptions.forEach(Subscription::close);
    }
}
