// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.swtbot;

import garboard.workbench.scenarios.TrialRun;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

class TrialRunTest extends TrialRun {

    @Override
    protected Hand hand(WindowUnderTest opened) {
        return new BotHand(opened);
    }

    @Override
    protected String childApplication() {
        return BotChild.ID;
    }
}
