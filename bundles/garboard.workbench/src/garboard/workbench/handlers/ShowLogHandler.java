// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.shell.LogFile;

/** Shows the log file. */
public final class ShowLogHandler {

    @Execute
    void run(LogFile log) {
        log.show();
    }
}
