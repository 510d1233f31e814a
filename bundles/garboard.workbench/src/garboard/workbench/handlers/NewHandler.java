// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.session.files.Filing;

/** Starts an empty record. */
public final class NewHandler {

    @Execute
    void run(Filing filing) {
        filing.create();
    }
}
