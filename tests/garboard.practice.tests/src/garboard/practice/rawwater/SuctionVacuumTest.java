// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.PressureDifference;

class SuctionVacuumTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged vacuum(String measured) {
        record.getRawWater().setMeasuredVacuumAtPump(PressureDifference.valueOf(measured));
        return judge(SuctionVacuum.check(), record);
    }

    @Test
    void twentyKilopascalIsTheLimit() {
        // common practice: aim for 10 kPa (3 inHg), act above 20 kPa (6 inHg)
        vacuum("20 kPa").meets();
        vacuum("20.1 kPa").fallsShort().limit(20, "kPa", 1e-9);
        vacuum("3 inHg").meets();
        vacuum("6.5 inHg").fallsShort();
    }

    @Test
    void makersVacuumReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumRawWaterVacuum(PressureDifference.of(5, "inHg"));
        vacuum("18 kPa").fallsShort().limitFromMaker();
        vacuum("5 inHg").meets();
    }

    @Test
    void cannotTellWithoutTheGauge() {
        judge(SuctionVacuum.check(), record).cannotTell("rawWater.measuredVacuumAtPump");
    }
}
