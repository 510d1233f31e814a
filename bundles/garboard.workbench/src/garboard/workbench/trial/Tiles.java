// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Controls of one size side by side, as many as there is room for, then below. */
final class Tiles extends Layout {

    private static final int BETWEEN = 8;

    private final int narrowest;
    private final int height;

    Tiles(int narrowest, int height) {
        this.narrowest = narrowest;
        this.height = height;
    }

    @Override
    protected Point computeSize(Composite area, int widthHint, int heightHint, boolean flushCache) {
        int width = widthHint == SWT.DEFAULT ? 2 * narrowest : widthHint;
        int count = visible(area).size();
        int rows = (count + columns(width) - 1) / columns(width);
        return new Point(width, rows * (height + BETWEEN));
    }

    @Override
    protected void layout(Composite area, boolean flushCache) {
        int width = area.getClientArea().width;
        int columns = columns(width);
        int each = (width - (columns - 1) * BETWEEN) / columns;
        List<Control> tiles = visible(area);
        for (int index = 0; index < tiles.size(); index++) {
            tiles.get(index).setBounds(index % columns * (each + BETWEEN), index / columns * (height + BETWEEN), Math.max(1, each), height);
        }
    }

    @Override
    protected boolean flushCache(Control control) {
        return true;
    }

    private int columns(int width) {
        return Math.max(1, (width + BETWEEN) / (narrowest + BETWEEN));
    }

    private static List<Control> visible(Composite area) {
        return Arrays.stream(area.getChildren()).filter(Control::getVisible).toList();
    }
}
