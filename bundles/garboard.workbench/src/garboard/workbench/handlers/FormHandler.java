// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import jakarta.inject.Named;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;

import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.handover.Exports;

/** Writes the workbook that is taken on board and filled in, with what the open record holds already. */
public final class FormHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent();
    }

    @Execute
    void run(Desk desk, Ask ask, Exports exports, @Named(IServiceConstants.ACTIVE_SHELL) Shell shell) {
        exports.form(desk, ask, shell);
    }
}
