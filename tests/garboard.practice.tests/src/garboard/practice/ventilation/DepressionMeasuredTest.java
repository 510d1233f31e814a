// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.PressureDifference;

class DepressionMeasuredTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged depression(String reading) {
        record.getVentilation().setDepression(PressureDifference.valueOf(reading));
        return judge(DepressionMeasured.check(), record);
    }

    @Test
    void sixtyThreePascalAreTheLimit() {
        // common practice: 63 Pa (0.25 inH2O), at the very most 125 Pa
        depression("63 Pa").meets();
        depression("64 Pa").fallsShort().limit(63, "Pa", 1e-9);
        depression("0.25 inH2O").meets();
        depression("0.5 inH2O").fallsShort();
    }

    @Test
    void makersDepressionReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumDepression(PressureDifference.of(100, "Pa"));
        depression("90 Pa").meets().limitFromMaker();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(DepressionMeasured.check(), record).cannotTell("ventilation.depression");
    }
}
