// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;

/** One line of a sheet of fields. */
interface Line {

    /** {@return the height of the line} @param place whether its controls are put into their places, else only measured */
    int layout(Columns columns, int y, boolean place);

    /** A control as wide as the sheet: a heading, a list. */
    record Wide(Control control, int indent, int above) implements Line {
        @Override
        public int layout(Columns columns, int y, boolean place) {
            int width = Math.max(1, columns.width() - indent - columns.gap());
            Point size = control.computeSize(width, SWT.DEFAULT, false);
            if (place) {
                control.setBounds(indent, y + above, width, size.y);
            }
            return above + size.y;
        }
    }
}
