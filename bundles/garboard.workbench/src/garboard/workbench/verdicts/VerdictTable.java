// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.session.verdicts.VerdictFilter;
import garboard.session.verdicts.VerdictKey;
import garboard.session.verdicts.VerdictList;
import garboard.session.verdicts.VerdictList.Line;
import garboard.session.verdicts.VerdictList.Row;
import garboard.workbench.Desk;
import garboard.workbench.look.Spoken;

/**
 * The verdicts below each other, two lines each: what must hold, then where and by how much. A row is made when it is seen. An edit
 * changes rows without moving the one that a person reads.
 */
final class VerdictTable {

    private final Table table;
    private final RowPainter painter;
    private final Recent recent;
    private final Consumer<Optional<Row>> chosenListener;
    private VerdictList list = VerdictList.of(new Evaluation(List.of(), List.of(), LocalDate.EPOCH), VerdictFilter.usual(), Optional.empty());
    private Optional<VerdictWords> words = Optional.empty();
    private Optional<VerdictKey> chosen = Optional.empty();

    /** @param chosenListener told of the row that a person chooses */
    VerdictTable(Composite parent, Desk desk, Consumer<Optional<Row>> chosenListener) {
        this.chosenListener = chosenListener;
        table = new Table(parent, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData("garboard.id", "verdicts.list");
        new TableColumn(table, SWT.LEFT);
        recent = new Recent(table.getDisplay(), this::renew);
        painter = new RowPainter(table, desk, recent);
        Spoken.name(table, desk.texts(VerdictTable.class).get("list"));
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Selection, event -> choose(selected()));
        table.addListener(SWT.Resize, event -> fit());
        table.addListener(SWT.MeasureItem, painter::measure);
        table.addListener(SWT.EraseItem, event -> painter.erase(event));
        table.addListener(SWT.PaintItem, event -> row(event).ifPresent(row -> painter.paint(event, row, words.orElseThrow())));
        paint();
    }

    Table control() {
        return table;
    }

    /** {@return the verdict that is chosen, listed or not} */
    Optional<VerdictKey> chosen() {
        return chosen;
    }

    /** {@return the row that is chosen in the list} */
    Optional<Row> selected() {
        int index = table.getSelectionIndex();
        return index < 0 || index >= list.rows().size() ? Optional.empty() : Optional.of(list.rows().get(index));
    }

    private void choose(Optional<Row> row) {
        chosen = row.filter(Line.class::isInstance).map(line -> ((Line) line).key());
        chosenListener.accept(row);
    }

    /** Shows another record from the top, or none. */
    void begin(Optional<VerdictWords> inWords) {
        words = inWords;
        chosen = Optional.empty();
        recent.forget();
        show(VerdictList.of(new Evaluation(List.of(), List.of(), LocalDate.EPOCH), VerdictFilter.usual(), Optional.empty()));
    }

    /** Shows the verdicts as they are now, marking those that changed for a moment. */
    void show(VerdictList now, List<VerdictKey> changed) {
        recent.add(changed);
        show(now);
    }

    /** Shows a list that a person asked for: from its head, or with the chosen verdict in view. */
    void showFromTop(VerdictList now) {
        chosen = chosen.filter(key -> now.place(key).isPresent());
        show(now);
        if (table.getItemCount() > 0) {
            table.setTopIndex(0);
        }
        if (table.getSelectionIndex() >= 0) {
            table.showSelection();
        }
    }

    /** Shows a list; the row at the top stays at the top while it is listed. */
    void show(VerdictList now) {
        VerdictList before = list;
        list = now;
        if (sameRows(before, now)) {
            for (int index = 0; index < now.rows().size(); index++) {
                if (before.rows().get(index) instanceof Line was && now.rows().get(index) instanceof Line is && was.verdict() != is.verdict()) {
                    table.clear(index);
                }
            }
            return;
        }
        int top = topAfter(before, now);
        table.setRedraw(false);
        table.setItemCount(now.rows().size());
        table.clearAll();
        reselect();
        table.setTopIndex(top);
        table.setRedraw(true);
    }

    private static boolean sameRows(VerdictList before, VerdictList now) {
        if (before.rows().size() != now.rows().size()) {
            return false;
        }
        for (int index = 0; index < now.rows().size(); index++) {
            if (!same(before.rows().get(index), now.rows().get(index))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Row one, Row other) {
        return one instanceof Line line ? other instanceof Line another && line.key().equals(another.key()) : one.equals(other);
    }

    /** Where the first row that was seen and still is listed must stand, so that nothing moves under the eyes of who reads. */
    private int topAfter(VerdictList before, VerdictList now) {
        int top = table.getItemCount() == 0 ? 0 : table.getTopIndex();
        // Who is at the head of the list sees what comes there.
        if (top == 0 || before.isEmpty()) {
            return 0;
        }
        for (int index = top; index < before.rows().size(); index++) {
            if (before.rows().get(index) instanceof Line line && now.place(line.key()).isPresent()) {
                return Math.max(0, now.place(line.key()).getAsInt() - (index - top));
            }
        }
        return 0;
    }

    private void reselect() {
        int place = chosen.map(key -> list.place(key).orElse(-1)).orElse(-1);
        if (place < 0) {
            table.deselectAll();
        } else if (place != table.getSelectionIndex()) {
            // Not select: the keys must go on from there, too.
            table.setSelection(place);
        }
    }

    /** Puts the focus on the chosen verdict, or on the first. */
    void enter() {
        table.setFocus();
        if (selected().isEmpty()) {
            list.rows().stream().filter(Line.class::isInstance).findFirst().ifPresent(first -> {
                table.setSelection(list.rows().indexOf(first));
                choose(Optional.of(first));
            });
        }
    }

    /** Chooses a verdict and brings it into view. @return whether it is listed */
    boolean reveal(VerdictKey key) {
        chosen = Optional.of(key);
        if (list.place(key).isEmpty()) {
            table.deselectAll();
            return false;
        }
        table.setSelection(list.place(key).getAsInt());
        chosenListener.accept(selected());
        return true;
    }

    /** {@return the verdict that is chosen, when it is listed} */
    Optional<Verdict> verdict() {
        return chosen.flatMap(key -> list.place(key).stream().boxed().findFirst()).map(place -> ((Line) list.rows().get(place)).verdict());
    }

    private void fill(Event event) {
        int index = table.indexOf((TableItem) event.item);
        if (index >= 0 && index < list.rows().size() && words.isPresent()) {
            ((TableItem) event.item).setText(painter.spoken(list.rows().get(index), words.get()));
        }
    }

    private Optional<Row> row(Event event) {
        int index = table.indexOf((TableItem) event.item);
        return index < 0 || index >= list.rows().size() ? Optional.empty() : Optional.of(list.rows().get(index));
    }

    private void fit() {
        int width = table.getClientArea().width;
        if (width > 0 && table.getColumn(0).getWidth() != width) {
            table.getColumn(0).setWidth(width);
        }
        painter.fit(width);
    }

    private void renew() {
        if (!table.isDisposed()) {
            table.clearAll();
            table.redraw();
        }
    }

    /** Takes the colours of now. */
    void paint() {
        painter.turn();
        table.redraw();
    }
}
