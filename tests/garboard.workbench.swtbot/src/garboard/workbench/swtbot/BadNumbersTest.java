// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.swtbot;

import garboard.workbench.scenarios.BadNumbers;
import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.WindowUnderTest;

class BadNumbersTest extends BadNumbers {

    @Override
    protected Hand hand(WindowUnderTest opened) {
        return new BotHand(opened);
    }

    @Override
    protected String childApplication() {
        return BotChild.ID;
    }
}
