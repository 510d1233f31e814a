// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.swt.widgets.Shell;

/** Ends the program, as closing its window does. */
public final class QuitHandler {

    @Execute
    void run(MApplication application) {
        ((Shell) application.getChildren().getFirst().getWidget()).close();
    }
}
