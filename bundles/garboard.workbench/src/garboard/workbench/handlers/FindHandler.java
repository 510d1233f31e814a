// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;

import garboard.workbench.Desk;
import garboard.workbench.verdicts.VerdictsPart;

/** Puts the focus where the verdicts can be searched. */
public final class FindHandler {

    @CanExecute
    boolean canRun(Desk desk) {
        return desk.open().isPresent();
    }

    @Execute
    void run(EPartService parts) {
        if (parts.showPart("garboard.part.verdicts", PartState.ACTIVATE).getObject() instanceof VerdictsPart verdicts) {
            verdicts.find();
        }
    }
}
