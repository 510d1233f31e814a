// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import garboard.workbench.scenarios.ChildApplication;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

/** The window in a process of its own, moved with SWT's events. */
public final class SwtChild extends ChildApplication {

    static final String ID = "garboard.workbench.tests.child";

    @Override
    protected Hand hand(WindowUnderTest window) {
        return new SwtHand(window);
    }
}
