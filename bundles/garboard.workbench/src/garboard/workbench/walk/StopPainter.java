// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;

import garboard.checks.Standing;
import garboard.session.StopStanding;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;

/** Draws the rows of the walk: the mark of the worst verdict, the name, and at the edge how many need action and how many cannot tell. */
final class StopPainter {

    private final Tree tree;
    private final Desk desk;
    private final Font bold;
    private final Font small;
    private int width;
    private int line;
    private int gap;

    StopPainter(Tree tree, Desk desk) {
        this.tree = tree;
        this.desk = desk;
        bold = Lettering.font(tree, 100, SWT.BOLD);
        small = Lettering.font(tree, 90, SWT.NORMAL);
        tree.addListener(SWT.Dispose, event -> {
            bold.dispose();
            small.dispose();
        });
    }

    void turn() {
        tree.setBackground(desk.palette().sheet());
        tree.setForeground(desk.palette().ink());
        line = Lettering.height(tree, 1);
        gap = Lettering.width(tree, 0.8);
    }

    /** @param now how wide the rows are; to ask the tree for each row would cost more than to draw it */
    void fit(int now) {
        width = now;
    }

    void measure(Event event) {
        event.height = line * 5 / 4;
    }

    void erase(Event event) {
        event.detail &= ~SWT.FOREGROUND;
        boolean selected = (event.detail & SWT.SELECTED) != 0;
        event.detail &= ~(SWT.SELECTED | SWT.HOT | SWT.BACKGROUND);
        GC gc = event.gc;
        gc.setBackground(selected ? desk.palette().band() : desk.palette().sheet());
        gc.fillRectangle(0, event.y, width, event.height);
        if (selected) {
            gc.setBackground(desk.palette().accent());
            gc.fillRectangle(0, event.y, Math.max(3, gap / 3), event.height);
        }
    }

    void paintStage(Event event, String name) {
        event.gc.setFont(bold);
        event.gc.setForeground(desk.palette().faint());
        event.gc.drawText(name, event.x, event.y + (event.height - line) / 2, true);
    }

    void paint(Event event, String name, StopStanding standing) {
        GC gc = event.gc;
        int middle = event.y + event.height / 2;
        int size = line * 4 / 5;
        standing.worst().ifPresent(worst -> Mark.draw(gc, desk.palette(), worst.standing(), event.x, middle - size / 2, size));
        int end = count(gc, Standing.CANNOT_TELL, standing.cannotTell(), width - gap, middle);
        end = count(gc, Standing.FALLS_SHORT, standing.needAction(), end, middle);
        gc.setFont(tree.getFont());
        gc.setForeground(desk.palette().ink());
        int x = event.x + line + gap / 2;
        if (end > x) {
            gc.drawText(Lettering.cut(gc, name, end - x), x, middle - line / 2, true);
        }
    }

    /** Draws how many there are of a standing, right-aligned. @return where there is room to the left of it */
    private int count(GC gc, Standing standing, int number, int end, int middle) {
        if (number == 0) {
            return end;
        }
        gc.setFont(small);
        gc.setForeground(desk.palette().of(standing));
        String digits = String.valueOf(number);
        int needed = gc.textExtent(digits).x;
        gc.drawText(digits, end - needed, middle - gc.getFontMetrics().getHeight() / 2, true);
        int size = line * 3 / 5;
        Mark.draw(gc, desk.palette(), standing, end - needed - size - gap / 3, middle - size / 2, size);
        return end - needed - size - gap - gap / 3;
    }
}
