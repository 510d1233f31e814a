// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.session.files.Filing;

/** Opens a record, or a workbook with one in it. */
public final class OpenHandler {

    @Execute
    void run(Filing filing) {
        filing.open();
    }
}
