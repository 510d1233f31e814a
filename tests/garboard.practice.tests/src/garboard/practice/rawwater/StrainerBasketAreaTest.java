// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.WaterHoseRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Length;

class StrainerBasketAreaTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.addSuction(record);

    private Judged open(String area) {
        hose.setBore(Length.of(25.4, "mm"));
        record.getRawWater().getStrainer().setBasketOpenArea(Area.valueOf(area));
        return judge(StrainerBasketArea.check(), record);
    }

    @Test
    void threeTimesTheHoseIsWanted() {
        // common practice: 3 x the hose's area; 3 x 506.7 = 1520 mm2
        open("1519 mm2").fallsShort().limit(1520, "mm2", 0.5);
        open("1521 mm2").meets();
    }

    @Test
    void widestSuctionHoseCounts() {
        Hoses.addSuction(record).setBore(Length.of(38.1, "mm"));
        // 3 x 1140.1 mm2
        open("1521 mm2").fallsShort().limit(3420, "mm2", 0.5);
    }

    @Test
    void remedyNamesTheArea() {
        open("1000 mm2").afterRemedy().meets().measured(1530, "mm2", 1e-6);
    }

    @Test
    void cannotTellWithoutBasketAndHose() {
        judge(StrainerBasketArea.check(), record).cannotTell("rawWater.strainer.basketOpenArea", "rawWater.hoses[hose-1].bore");
    }
}
