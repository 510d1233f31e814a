// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.session.files.Filing;
import garboard.workbench.Desk;
import garboard.workbench.shell.Notices;
import garboard.workbench.shell.Saved;

/** Saves the open record. */
public final class SaveHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent();
    }

    @Execute
    void run(Filing filing, Notices notices, Desk desk) {
        if (filing.save()) {
            notices.say(Saved.words(desk));
        }
    }
}
