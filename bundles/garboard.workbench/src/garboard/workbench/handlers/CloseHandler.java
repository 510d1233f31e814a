// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.session.files.Filing;
import garboard.workbench.Desk;

/** Closes the open record and shows the start page. */
public final class CloseHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent();
    }

    @Execute
    void run(Filing filing) {
        filing.close();
    }
}
