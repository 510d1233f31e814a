// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swtchart.Chart;

/**
 * A chart that can be scrolled out of view. What draws the tick marks of an axis sets the clipping of the graphics context anew; on GTK that lifts
 * the clipping by the parents, and the axes are drawn over whatever stands beside the scrolled sheet. They are left away; grid and frame do.
 */
final class ClippedChart extends Chart {

    private static final String TICK_MARKS = "AxisTickMarks";

    ClippedChart(Composite parent) {
        super(parent, SWT.NONE);
    }

    @Override
    public void addPaintListener(PaintListener listener) {
        if (!listener.getClass().getSimpleName().equals(TICK_MARKS)) {
            super.addPaintListener(listener);
        }
    }
}
