// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Controls below each other, each as wide as there is room and as high as it needs for that; what is not visible takes no room. */
final class Stacked extends Layout {

    private static final int USUAL_WIDTH = 500;

    private final int left;
    private final int between;

    /** @param left how far everything is moved in @param between room between two */
    Stacked(int left, int between) {
        this.left = left;
        this.between = between;
    }

    @Override
    protected Point computeSize(Composite area, int widthHint, int heightHint, boolean flushCache) {
        int width = widthHint == SWT.DEFAULT ? USUAL_WIDTH : widthHint;
        return new Point(width, run(area, width, false, flushCache));
    }

    @Override
    protected void layout(Composite area, boolean flushCache) {
        run(area, area.getClientArea().width, true, flushCache);
    }

    @Override
    protected boolean flushCache(Control control) {
        return true;
    }

    private int run(Composite area, int width, boolean place, boolean flush) {
        int y = between;
        for (Control part : area.getChildren()) {
            if (part.getVisible()) {
                int inner = Math.max(1, width - left);
                int height = part.computeSize(inner, SWT.DEFAULT, flush).y;
                if (place) {
                    part.setBounds(left, y, inner, height);
                }
                y += height + between;
            }
        }
        return y;
    }
}
