// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

/** Room on a sheet for what changes while it is there: laying out a whole sheet takes longer than a frame, so it is done only when it has to be. */
final class Room {

    private Room() {
    }

    /** Asks for another layout when a control needs another height for its width now, or comes or goes. */
    static void fit(Control control, boolean visible) {
        boolean turned = control.getVisible() != visible;
        if (turned) {
            control.setVisible(visible);
        }
        boolean outgrown = visible && control.computeSize(control.getSize().x, SWT.DEFAULT).y != control.getSize().y;
        if (turned || outgrown) {
            control.requestLayout();
        }
    }
}
