// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.Desk;

/** Does the step again that was taken back last. */
public final class RedoHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().filter(record -> record.edits().canRedo()).isPresent();
    }

    @Execute
    void run(Desk desk) {
        desk.open().ifPresent(record -> Retrace.take(desk, record, record.edits()::redo));
    }
}
