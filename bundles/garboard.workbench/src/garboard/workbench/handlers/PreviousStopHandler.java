// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.Desk;

/** Goes to the stop before the one where the person is. */
public final class PreviousStopHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent() && desk.stop().previous().isPresent();
    }

    @Execute
    void run(Desk desk) {
        desk.stop().previous().ifPresent(desk::goTo);
    }
}
