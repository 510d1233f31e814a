// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class PickUpClearanceTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged clear(String distance) {
        record.getFuelSupply().setPickUpClearance(Length.valueOf(distance));
        return judge(PickUpClearance.check(), record);
    }

    @Test
    void anInchOffTheBottom() {
        // Gerr: 25 mm (1 in) off the bottom
        clear("1 in").meets();
        clear("25 mm").meets();
        clear("24 mm").fallsShort().limit(25, "mm", 1e-9).afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheDistance() {
        judge(PickUpClearance.check(), record).cannotTell("fuelSupply.pickUpClearance");
    }
}
