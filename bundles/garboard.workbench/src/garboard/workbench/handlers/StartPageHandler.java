// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.shell.Stage;

/** Shows the start page; an open record stays open. */
public final class StartPageHandler {

    @Execute
    void run(Stage stage) {
        stage.showStart();
    }
}
