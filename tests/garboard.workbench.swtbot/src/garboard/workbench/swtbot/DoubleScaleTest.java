// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.swtbot;

import garboard.workbench.scenarios.DoubleScale;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

class DoubleScaleTest extends DoubleScale {

    @Override
    protected Hand hand(WindowUnderTest opened) {
        return new BotHand(opened);
    }

    @Override
    protected String childApplication() {
        return BotChild.ID;
    }
}
