// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import jakarta.inject.Named;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;

import garboard.workbench.Desk;
import garboard.workbench.shell.AboutDialog;

/** Says what program this is. */
public final class AboutHandler {

    @Execute
    void run(Desk desk, @Named(IServiceConstants.ACTIVE_SHELL) Shell shell) {
        new AboutDialog(shell, desk).open();
    }
}
