// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.List;

import org.eclipse.e4.ui.di.AboutToShow;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuElement;

/** The records that were open last, in the menu. */
public final class RecentMenu {

    @AboutToShow
    void fill(List<MMenuElement> items) {
    }
}
