// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import garboard.checks.Standing;
import garboard.model.GarboardPackage.Literals;
import garboard.session.Field;
import garboard.workbench.fields.ItemsEditor.Column;
import garboard.workbench.look.Palette;

/** The table of a list: a line for each item with the mark of its standing, a column for each of its main fields. */
final class ItemTable {

    /** The first column holds the mark. */
    static final int FIRST = 1;
    private static final int MARK = 3;
    private static final int NARROWEST = 7;
    private static final int WIDEST = 34;
    private static final int FEWEST_LINES = 1;
    private static final int MOST_LINES = 12;

    private final Table table;
    private final FieldContext context;
    private final List<Column> columns;
    private List<EObject> items = List.of();

    ItemTable(Composite parent, FieldContext context, List<Column> columns) {
        this.context = context;
        this.columns = columns;
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        new TableColumn(table, SWT.CENTER).setResizable(false);
        for (Column column : columns) {
            var head = new TableColumn(table, SWT.LEFT);
            head.setText(heading(column));
            head.setToolTipText(context.desk().labels().labelOfPath(column.path()));
        }
        table.addListener(SWT.PaintItem, this::paintMark);
    }

    private String heading(Column column) {
        return column.attribute().getEContainingClass() == Literals.POINT ? context.texts().get("figure." + column.attribute().getName())
            : context.desk().labels().label(column.attribute());
    }

    Table control() {
        return table;
    }

    List<EObject> items() {
        return items;
    }

    /** {@return the field in a cell; nothing in the column of the marks} */
    Optional<Field> field(int line, int column) {
        return line < 0 || line >= items.size() || column < FIRST ? Optional.empty()
            : Optional.of(new Field(items.get(line), columns.get(column - FIRST).path()));
    }

    /** Shows the items that there are now. @return whether the table wants another height */
    boolean show(List<EObject> now) {
        boolean first = items.isEmpty() && !now.isEmpty();
        boolean otherHeight = lines(now.size()) != lines(items.size());
        items = new ArrayList<>(now);
        if (table.getItemCount() != now.size()) {
            table.setItemCount(now.size());
        }
        for (int line = 0; line < now.size(); line++) {
            showLine(line);
        }
        if (first || now.isEmpty()) {
            fitColumns();
        }
        return otherHeight;
    }

    /** Shows one item anew. */
    void showLine(int line) {
        TableItem item = table.getItem(line);
        Palette palette = context.desk().palette();
        for (int column = FIRST; column <= columns.size(); column++) {
            Field field = field(line, column).orElseThrow();
            String text = context.reader().shown(context.edits(), field).replace('\n', ' ');
            if (!item.getText(column).equals(text)) {
                item.setText(column, text);
            }
            boolean unread = context.edits().unread(field).isPresent();
            item.setForeground(column, unread ? palette.of(Standing.FALLS_SHORT) : null);
        }
    }

    /** Shows the marks anew. */
    void judge() {
        if (!items.isEmpty()) {
            table.redraw();
        }
    }

    private void paintMark(Event event) {
        int line = event.index == 0 && event.item instanceof TableItem item ? table.indexOf(item) : -1;
        if (line < 0 || line >= items.size()) {
            return;
        }
        context.record().verdicts().byField().worstOf(items.get(line)).ifPresent(standing -> {
            int size = Math.min(event.height, table.getColumn(0).getWidth()) / 2 / 2 * 2;
            event.gc.setAntialias(SWT.ON);
            StandingMark.draw(event.gc, context.desk().palette(), standing, event.x + (table.getColumn(0).getWidth() - size) / 2 - size / 4,
                event.y + (event.height - size) / 2, size);
        });
    }

    private void fitColumns() {
        var gc = new GC(table);
        int em = Math.max(1, (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth()));
        table.getColumn(0).setWidth(MARK * em);
        for (int column = FIRST; column <= columns.size(); column++) {
            int widest = gc.textExtent(table.getColumn(column).getText()).x;
            for (TableItem item : table.getItems()) {
                widest = Math.max(widest, gc.textExtent(item.getText(column)).x);
            }
            table.getColumn(column).setWidth(Math.max(NARROWEST * em, Math.min(WIDEST * em, widest + 3 * em)));
        }
        gc.dispose();
    }

    private static int lines(int items) {
        return Math.max(FEWEST_LINES, Math.min(MOST_LINES, items));
    }

    /** {@return the height that shows the items, up to a number of them} */
    int height() {
        Point trim = table.computeSize(SWT.DEFAULT, 0);
        return trim.y + lines(items.size()) * table.getItemHeight() + table.getItemHeight() / 4;
    }
}
