// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.StrainerPickUp;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Length;

class GratingAreaTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void anInchBehindARoundStrainer() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.ROUND_NON_DIRECTIONAL);
        record.getRawWater().getSeacock().setBore(Length.of(25.4, "mm"));
    }

    private Judged open(String area) {
        record.getRawWater().getPickUp().setGratingOpenArea(Area.valueOf(area));
        return judge(GratingArea.check(), record);
    }

    @Test
    void twiceTheBoreIsWanted() {
        // summary of a classification rule, quoted: 2 x the bore's area; 25.4 mm gives 1013 mm2
        open("1010 mm2").fallsShort().limit(1013, "mm2", 0.5);
        open("1014 mm2").meets();
        open("1.58 in2").meets();
    }

    @Test
    void exactlyTwiceMeets() {
        // pi/4 x (20 mm)2 x 2
        record.getRawWater().getSeacock().setBore(Length.of(20, "mm"));
        open("628.3185307179587 mm2").meets();
    }

    @Test
    void remedyNamesTheArea() {
        open("500 mm2").afterRemedy().meets().measured(1020, "mm2", 1e-6);
    }

    @Test
    void doesNotApplyWithoutAGrating() {
        record.getRawWater().getPickUp().setKind(StrainerPickUp.NONE);
        open("1 mm2").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheArea() {
        judge(GratingArea.check(), record).cannotTell("rawWater.pickUp.gratingOpenArea");
    }
}
