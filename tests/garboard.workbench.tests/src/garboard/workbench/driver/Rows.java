// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.swt.widgets.Widget;

import garboard.workbench.scenarios.Row;

/** The rows of tables and trees. On the window's thread. */
final class Rows {

    private Rows() {
    }

    static List<String> of(Widget list) {
        var rows = new ArrayList<String>();
        items(list).forEach(item -> rows.add(text(item)));
        return rows;
    }

    static void pick(Widget list, String row) {
        Item item = Row.named(row, items(list), Rows::text)
            .orElseThrow(() -> new AssertionError("No row with \"" + row + "\"; there are " + of(list)));
        if (list instanceof Table table) {
            table.setSelection((TableItem) item);
        } else {
            ((Tree) list).setSelection((TreeItem) item);
        }
        var event = new Event();
        event.item = item;
        list.notifyListeners(SWT.Selection, event);
    }

    private static List<Item> items(Widget list) {
        var items = new ArrayList<Item>();
        if (list instanceof Table table) {
            for (TableItem item : table.getItems()) {
                item.getText();
                items.add(item);
            }
        } else if (list instanceof Tree tree) {
            for (TreeItem item : tree.getItems()) {
                collect(item, items);
            }
        } else {
            throw new AssertionError(list + " is no list");
        }
        return items;
    }

    private static void collect(TreeItem item, List<Item> into) {
        into.add(item);
        for (TreeItem below : item.getItems()) {
            collect(below, into);
        }
    }

    private static String text(Item item) {
        if (item instanceof TableItem row) {
            return joined(Math.max(1, row.getParent().getColumnCount()), row::getText);
        }
        TreeItem row = (TreeItem) item;
        return joined(Math.max(1, row.getParent().getColumnCount()), row::getText);
    }

    private static String joined(int columns, java.util.function.IntFunction<String> cell) {
        return IntStream.range(0, columns).mapToObj(cell).collect(Collectors.joining(" | "));
    }
}
