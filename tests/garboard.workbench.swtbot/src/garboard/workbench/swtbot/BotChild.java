// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.swtbot;

import garboard.workbench.scenarios.ChildApplication;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

/** The window in a process of its own, moved with SWTBot. */
public final class BotChild extends ChildApplication {

    static final String ID = "garboard.workbench.swtbot.child";

    @Override
    protected Hand hand(WindowUnderTest window) {
        return new BotHand(window);
    }
}
