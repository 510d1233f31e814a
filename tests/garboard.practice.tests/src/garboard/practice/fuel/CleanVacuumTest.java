// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.PressureDifference;

class CleanVacuumTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged vacuum(String reading) {
        record.getFuelSupply().setCleanVacuumAtPump(PressureDifference.valueOf(reading));
        return judge(CleanVacuum.check(), record);
    }

    @Test
    void tenKilopascalIsTheLimit() {
        // common practice: 10 kPa (3 inHg) with a clean element
        vacuum("10 kPa").meets();
        vacuum("10.1 kPa").fallsShort().limit(10, "kPa", 1e-9);
        vacuum("2.9 inHg").meets();
        vacuum("3.1 inHg").fallsShort();
    }

    @Test
    void makersVacuumReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumFuelVacuum(PressureDifference.of(6, "inHg"));
        vacuum("6 inHg").meets().limitFromMaker();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(CleanVacuum.check(), record).cannotTell("fuelSupply.cleanVacuumAtPump");
    }
}
