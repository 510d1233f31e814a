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

/** Writes the report of the open record as a workbook. */
public final class ReportHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent();
    }

    @Execute
    void run(Desk desk, Ask ask, Exports exports, @Named(IServiceConstants.ACTIVE_SHELL) Shell shell) {
        exports.report(desk, ask, shell);
    }
}
