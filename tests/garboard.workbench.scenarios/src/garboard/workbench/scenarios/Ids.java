// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.util.Optional;

import org.eclipse.e4.ui.model.application.MApplicationElement;
import org.eclipse.swt.widgets.Widget;

/** The ids by which widgets are named: their own, or that of the element of the window's model that they show ({@code garboard.tool.undo}). */
public final class Ids {

    private Ids() {
    }

    /** {@return the id of a widget} On the window's thread. */
    public static Optional<String> of(Widget widget) {
        if (widget.getData("garboard.id") instanceof String id) {
            return Optional.of(id);
        }
        return widget.getData("modelElement") instanceof MApplicationElement element ? Optional.ofNullable(element.getElementId()) : Optional.empty();
    }
}
