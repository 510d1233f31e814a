// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.PressureDifference;

class VacuumRiseTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged vacuum(String clean, String now) {
        record.getFuelSupply().setCleanVacuumAtPump(PressureDifference.valueOf(clean));
        record.getFuelSupply().setVacuumAtPumpNow(PressureDifference.valueOf(now));
        return judge(VacuumRise.check(), record);
    }

    @Test
    void threeInchesOverTheCleanReadingIsTheLimit() {
        // trade press, quoted: change at 3 to 4 inHg over the clean reading
        vacuum("2 inHg", "5 inHg").meets().limit(3, "inHg", 1e-9);
        vacuum("2 inHg", "5.1 inHg").fallsShort();
        vacuum("8 kPa", "18 kPa").meets().measured(10, "kPa", 1e-9);
    }

    @Test
    void accuraciesOfBothReadingsAddUp() {
        // 2.9 inHg with 0.1 inHg each way may be 3.1 inHg
        vacuum("2 inHg ±0.1 inHg", "4.9 inHg ±0.1 inHg").is(Standing.BORDERLINE);
        vacuum("2 inHg ±0.1 inHg", "4.5 inHg ±0.1 inHg").meets();
    }

    @Test
    void cannotTellWithoutBothReadings() {
        judge(VacuumRise.check(), record).cannotTell("fuelSupply.cleanVacuumAtPump", "fuelSupply.vacuumAtPumpNow");
    }
}
