// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class StrainerHoleSizeTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged holes(String size) {
        record.getRawWater().getStrainer().setHoleSize(Length.valueOf(size));
        return judge(StrainerHoleSize.check(), record);
    }

    @Test
    void holesOfUsualSizeMeet() {
        // common practice: 1.6 to 3 mm
        holes("1.6 mm").meets();
        holes("3 mm").meets();
        holes("0.1 in").meets();
    }

    @Test
    void finerAndWiderHolesFallShort() {
        holes("1.5 mm").fallsShort().limit(1.6, "mm", 1e-9);
        holes("3.1 mm").fallsShort().limit(3, "mm", 1e-9);
    }

    @Test
    void cannotTellWithoutTheSize() {
        judge(StrainerHoleSize.check(), record).cannotTell("rawWater.strainer.holeSize");
    }
}
