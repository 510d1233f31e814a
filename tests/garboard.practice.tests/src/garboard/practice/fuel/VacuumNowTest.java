// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.PressureDifference;

class VacuumNowTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged vacuum(String now) {
        record.getFuelSupply().setVacuumAtPumpNow(PressureDifference.valueOf(now));
        return judge(VacuumNow.check(), record);
    }

    @Test
    void sevenInchesIsTheLimit() {
        // common practice: 7 to 10 inHg (24 to 34 kPa)
        vacuum("7 inHg").meets();
        vacuum("7.1 inHg").fallsShort().limit(7, "inHg", 1e-9);
        vacuum("25 kPa").fallsShort();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(VacuumNow.check(), record).cannotTell("fuelSupply.vacuumAtPumpNow");
    }
}
