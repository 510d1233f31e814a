// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class SeparatorClearanceTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged clear(String below) {
        record.getFuelSupply().getSeparator().setClearanceBelow(Length.valueOf(below));
        return judge(SeparatorClearance.check(), record);
    }

    @Test
    void eightInchesAreWanted() {
        // Gerr: 8 in clear below
        clear("8 in").meets();
        clear("7.9 in").fallsShort().limit(8, "in", 1e-9);
        clear("210 mm").meets();
        clear("100 mm").afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheClearance() {
        judge(SeparatorClearance.check(), record).cannotTell("fuelSupply.separator.clearanceBelow");
    }
}
