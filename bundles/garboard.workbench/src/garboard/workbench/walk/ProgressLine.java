// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.session.verdicts.Progress;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;

/** How much of all checks is decided, as a line that fills up. The words below it say the same. */
final class ProgressLine extends Canvas {

    private final Desk desk;
    private Progress progress = new Progress(0, 0, 0);

    ProgressLine(Composite parent, Desk desk) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.desk = desk;
        addListener(SWT.Paint, event -> paint(event.gc));
    }

    void show(Progress now) {
        if (!now.equals(progress)) {
            progress = now;
            redraw();
        }
    }

    @Override
    public Point computeSize(int width, int height, boolean changed) {
        return new Point(width == SWT.DEFAULT ? Lettering.width(this, 10) : width, Math.max(4, Lettering.height(this, 0.4)));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(desk.palette().line());
        gc.fillRectangle(area);
        if (progress.apply() > 0) {
            gc.setBackground(desk.palette().accent());
            gc.fillRectangle(0, 0, area.width * progress.decided() / progress.apply(), area.height);
            gc.setBackground(desk.palette().of(Standing.FALLS_SHORT));
            gc.fillRectangle(0, 0, area.width * progress.needAction() / progress.apply(), area.height);
        }
    }
}
