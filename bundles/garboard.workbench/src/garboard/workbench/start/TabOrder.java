// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.Arrays;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Lets the tab key stop at each tile: a drawn control that listens to keys is passed over unless its parent names it. */
final class TabOrder {

    private TabOrder() {
    }

    /** Names everything below that can have the focus, in the order in which it was made. */
    static void follow(Composite page) {
        Control[] stops = Arrays.stream(page.getChildren()).filter(child -> !(child instanceof Label)).toArray(Control[]::new);
        page.setTabList(stops);
        for (Control stop : stops) {
            if (stop instanceof Composite inner && !(stop instanceof Tile)) {
                follow(inner);
            }
        }
    }
}
