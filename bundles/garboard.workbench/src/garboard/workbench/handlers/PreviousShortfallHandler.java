// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;

import garboard.session.verdicts.Inputs;
import garboard.session.verdicts.Shortfalls;
import garboard.session.verdicts.VerdictKey;
import garboard.workbench.Desk;

/** Goes back to the field of the verdict that needs action before the one looked at, and shows that verdict. */
public final class PreviousShortfallHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().filter(record -> record.verdicts().evaluation().fallsShort()).isPresent();
    }

    @Execute
    void run(Desk desk) {
        desk.open().flatMap(record -> Shortfalls.previous(record.verdicts().evaluation(), desk.verdict())).ifPresent(verdict -> {
            desk.lookAt(VerdictKey.of(verdict));
            desk.goTo(Inputs.target(verdict));
        });
    }
}
