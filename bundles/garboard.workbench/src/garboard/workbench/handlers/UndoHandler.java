// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.Desk;

/** Takes back the last step. It does so in a text field, too: what is typed there is a step of the record's. */
public final class UndoHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().filter(record -> record.edits().canUndo()).isPresent();
    }

    @Execute
    void run(Desk desk) {
        desk.open().ifPresent(record -> Retrace.take(desk, record, record.edits()::undo));
    }
}
