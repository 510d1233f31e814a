// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.Desk;

/** TODO */
public final class SaveAsHandler {

    @Execute
    void run(Desk desk) {
    }
}
