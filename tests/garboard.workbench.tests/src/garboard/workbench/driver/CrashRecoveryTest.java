// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import garboard.workbench.scenarios.CrashRecovery;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

class CrashRecoveryTest extends CrashRecovery {

    @Override
    protected Hand hand(WindowUnderTest opened) {
        return new SwtHand(opened);
    }

    @Override
    protected String childApplication() {
        return SwtChild.ID;
    }
}
