// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import garboard.checks.Verdict;
import garboard.session.Stop;
import garboard.session.StopStanding;
import garboard.workbench.Desk;
import garboard.workbench.look.Spoken;
import garboard.workbench.page.StopWords;
import garboard.workbench.text.Texts;

/** The stops of the walk below their stages, each with how it stands. What the rows draw, their texts say. */
final class StopTree {

    private static final StopStanding NOTHING = new StopStanding(Optional.empty(), 0, 0, 0);

    private final Desk desk;
    private final Texts.Of texts;
    private final Tree tree;
    private final StopPainter painter;
    private final Map<Stop, TreeItem> items = new EnumMap<>(Stop.class);
    private final Map<Stop, StopStanding> standings = new EnumMap<>(Stop.class);

    StopTree(Composite parent, Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(StopTree.class);
        tree = new Tree(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        tree.setData("garboard.id", "walk.tree");
        Spoken.name(tree, texts.get("tree"));
        new TreeColumn(tree, SWT.LEFT);
        for (Stop.Stage stage : Stop.Stage.values()) {
            var above = new TreeItem(tree, SWT.NONE);
            above.setText(texts.get("stage." + stage.name()));
            for (Stop stop : stage.stops()) {
                var item = new TreeItem(above, SWT.NONE);
                item.setData(stop);
                items.put(stop, item);
                standings.put(stop, NOTHING);
                item.setText(StopWords.of(desk, stop));
            }
            above.setExpanded(true);
        }
        painter = new StopPainter(tree, desk);
        tree.addListener(SWT.Selection, event -> go(event.item));
        tree.addListener(SWT.MeasureItem, painter::measure);
        tree.addListener(SWT.EraseItem, painter::erase);
        tree.addListener(SWT.PaintItem, this::paint);
        tree.addListener(SWT.Resize, event -> fit());
        painter.turn();
        follow(desk.stop());
    }

    Tree control() {
        return tree;
    }

    private void go(Object item) {
        if (item instanceof TreeItem row && row.getData() instanceof Stop stop && stop != desk.stop()) {
            desk.goTo(stop);
        }
    }

    /** Chooses the stop where the person is. */
    void follow(Stop stop) {
        TreeItem item = items.get(stop);
        if (tree.getSelectionCount() != 1 || tree.getSelection()[0] != item) {
            boolean first = tree.getSelectionCount() == 0;
            tree.setSelection(item);
            if (first) {
                tree.setTopItem(tree.getItem(0));
            }
        }
    }

    /** Shows how the stops stand; those that stand as before are left alone. */
    void show(Map<Stop, StopStanding> now) {
        boolean changed = false;
        for (Stop stop : Stop.values()) {
            StopStanding standing = now.getOrDefault(stop, NOTHING);
            if (!standing.equals(standings.get(stop))) {
                standings.put(stop, standing);
                items.get(stop).setText(spoken(stop, standing));
                changed = true;
            }
        }
        if (changed) {
            tree.redraw();
        }
    }

    private String spoken(Stop stop, StopStanding standing) {
        String name = StopWords.of(desk, stop);
        if (standing.worst().isEmpty()) {
            return name;
        }
        if (standing.needAction() + standing.cannotTell() == 0) {
            return texts.get("stop.spoken.fine", name);
        }
        String counted = texts.get("stop.spoken", name, texts.get("stop.action", standing.needAction()), texts.get("stop.cannotTell", standing.cannotTell()));
        return standing.needAction() == 0 ? counted : texts.get("stop.worst", counted + ".", standing.worst().map(Verdict::check).orElseThrow().title());
    }

    private void paint(Event event) {
        var item = (TreeItem) event.item;
        if (item.getData() instanceof Stop stop) {
            painter.paint(event, StopWords.of(desk, stop), standings.get(stop));
        } else {
            painter.paintStage(event, item.getText());
        }
    }

    private void fit() {
        int width = tree.getClientArea().width;
        if (width > 0 && tree.getColumn(0).getWidth() != width) {
            tree.getColumn(0).setWidth(width);
        }
        painter.fit(width);
    }

    /** Takes the colours of now. */
    void paint() {
        painter.turn();
        tree.redraw();
    }
}
