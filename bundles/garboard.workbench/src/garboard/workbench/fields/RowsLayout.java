// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;

/** Lines below each other, in columns that follow the width of the sheet and the size of the font. */
final class RowsLayout extends Layout {

    private static final int USUAL_WIDTH = 90;
    private static final int NARROWEST = 12;

    private final List<Line> lines;
    private int em;
    private int measuredWidth = -1;
    private int measuredHeight;

    RowsLayout(List<Line> lines) {
        this.lines = lines;
    }

    @Override
    protected Point computeSize(Composite area, int widthHint, int heightHint, boolean flushCache) {
        int width = widthHint == SWT.DEFAULT ? USUAL_WIDTH * em(area) : widthHint;
        if (flushCache || width != measuredWidth) {
            measuredHeight = run(area, width, false);
            measuredWidth = width;
        }
        return new Point(width, measuredHeight);
    }

    @Override
    protected void layout(Composite area, boolean flushCache) {
        int width = area.getClientArea().width;
        if (width > NARROWEST * em(area)) {
            run(area, width, true);
        } // else it has no place yet, and tables cannot be that small
    }

    @Override
    protected boolean flushCache(org.eclipse.swt.widgets.Control control) {
        measuredWidth = -1;
        return true;
    }

    private int run(Composite area, int width, boolean place) {
        Columns columns = Columns.of(width, em(area));
        int between = Math.max(2, columns.em() / 2);
        int y = between;
        for (Line line : lines) {
            y += line.layout(columns, y, place) + between;
        }
        return y;
    }

    private int em(Composite area) {
        if (em == 0) {
            var gc = new GC(area);
            gc.setFont(area.getFont());
            em = Math.max(1, (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth()));
            gc.dispose();
        }
        return em;
    }
}
