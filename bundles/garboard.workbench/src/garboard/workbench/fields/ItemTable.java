// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
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
    private static final int SQUEEZED = 11;
    private static final int HEADING = 10;
    private static final int FEWEST_LINES = 1;
    private static final int MOST_LINES = 12;

    private final Table table;
    private final FieldContext context;
    private final List<Column> columns;
    private List<EObject> items = List.of();
    private List<Optional<Standing>> marks = List.of();
    private int[] natural = {};
    private int fittedWidth;

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
            head.setToolTipText(column.reckoned().map(Column.Reckoned::heading).orElseGet(() -> context.desk().labels().labelOfPath(column.path())));
        }
        table.addListener(SWT.PaintItem, this::paintMark);
        table.addListener(SWT.Resize, event -> {
            if (table.getClientArea().width != fittedWidth) {
                fittedWidth = table.getClientArea().width;
                fitColumns();
            }
        });
    }

    private String heading(Column column) {
        if (column.reckoned().isPresent()) {
            return column.reckoned().get().heading();
        }
        return column.attribute().getEContainingClass() == Literals.POINT ? context.texts().get("figure." + column.attribute().getName())
            : context.desk().labels().label(column.attribute());
    }

    Table control() {
        return table;
    }

    List<EObject> items() {
        return items;
    }

    /** {@return whether a column depends on more than the fields of its item} */
    boolean reckons() {
        return columns.stream().anyMatch(column -> column.reckoned().isPresent());
    }

    /** {@return the field in a cell; nothing in the column of the marks and in one that is reckoned} */
    Optional<Field> field(int line, int column) {
        return line < 0 || line >= items.size() || column < FIRST || columns.get(column - FIRST).reckoned().isPresent() ? Optional.empty()
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
            Optional<Field> field = field(line, column);
            int reckoned = column - FIRST;
            String text = field.map(filled -> context.reader().shown(context.edits(), filled).replace('\n', ' '))
                .orElseGet(() -> columns.get(reckoned).reckoned().orElseThrow().text().apply(items.get(line)));
            if (!item.getText(column).equals(text)) {
                item.setText(column, text);
            }
            boolean unread = field.flatMap(context.edits()::unread).isPresent();
            item.setForeground(column, unread ? palette.of(Standing.FALLS_SHORT) : field.isEmpty() ? palette.faint() : null);
        }
    }

    /** Shows the marks anew. */
    void judge() {
        if (!items.isEmpty() && table.isVisible()) {
            List<Optional<Standing>> now = items.stream().map(context.record().verdicts().byField()::worstOf).toList();
            if (!now.equals(marks)) {
                marks = now;
                table.redraw(0, 0, table.getColumn(0).getWidth(), table.getClientArea().height, false);
            }
        }
    }

    private void paintMark(Event event) {
        int line = event.index == 0 && event.item instanceof TableItem item ? table.indexOf(item) : -1;
        if (line < 0 || line >= items.size()) {
            return;
        }
        context.record().verdicts().byField().worstOf(items.get(line)).ifPresent(standing -> {
            int size = Math.min(event.height, table.getColumn(0).getWidth()) * 2 / 3 / 2 * 2;
            Color colour = (event.detail & SWT.SELECTED) == 0 ? context.desk().palette().of(standing)
                : table.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT);
            StandingMark.draw(event.gc, colour, standing, event.x + (table.getColumn(0).getWidth() - size) / 2 - size / 4,
                event.y + (event.height - size) / 2, size);
        });
    }

    /** As wide as what stands in them; narrower where that lets all be seen at once. */
    private void fitColumns() {
        var gc = new GC(table);
        int em = Math.max(1, (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth()));
        natural = new int[columns.size()];
        for (int column = FIRST; column <= columns.size(); column++) {
            // A heading may be cut, what is entered rather not; the tip has the heading in full.
            int widest = Math.min(HEADING * em, gc.textExtent(table.getColumn(column).getText()).x);
            for (TableItem item : table.getItems()) {
                widest = Math.max(widest, gc.textExtent(item.getText(column)).x);
            }
            natural[column - FIRST] = Math.max(NARROWEST * em, Math.min(WIDEST * em, widest + 3 * em));
        }
        gc.dispose();
        table.getColumn(0).setWidth(MARK * em);
        share(table.getClientArea().width - MARK * em - em, em);
    }

    private void share(int room, int em) {
        int limit = WIDEST * em;
        while (limit > SQUEEZED * em && width(limit) > room) {
            limit--;
        }
        boolean fits = room > 0 && width(limit) <= room;
        int spare = fits ? (room - width(limit)) / columns.size() : 0;
        for (int column = FIRST; column <= columns.size(); column++) {
            int width = Math.min(fits ? limit : WIDEST * em, natural[column - FIRST]) + spare;
            if (table.getColumn(column).getWidth() != width) {
                table.getColumn(column).setWidth(width);
            }
        }
    }

    private int width(int limit) {
        int sum = 0;
        for (int wanted : natural) {
            sum += Math.min(limit, wanted);
        }
        return sum;
    }

    private static int lines(int items) {
        return Math.max(FEWEST_LINES, Math.min(MOST_LINES, items));
    }

    /** {@return the height that shows the items, up to a number of them} */
    int height() {
        return table.getHeaderHeight() + lines(items.size()) * table.getItemHeight() + table.getItemHeight() / 2 + 2 * table.getBorderWidth();
    }
}
