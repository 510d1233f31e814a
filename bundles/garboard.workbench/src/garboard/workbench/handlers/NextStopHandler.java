// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.Desk;

/** Goes to the stop after the one where the person is. */
public final class NextStopHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent() && desk.stop().next().isPresent();
    }

    @Execute
    void run(Desk desk) {
        desk.stop().next().ifPresent(desk::goTo);
    }
}
