// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.OutletPlace;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustOutletHeightTest {

    private static CommissioningRecord outletAt(OutletPlace place, String height) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).getOutlet().setPlace(place);
        exhaust(record).getOutlet().getInsideBottom().setZ(Length.valueOf(height));
        return record;
    }

    // common practice: 50 to 100 mm (2 to 4 in)
    @ParameterizedTest
    @CsvSource({ "TRANSOM, 50 mm, MEETS", "SIDE, 2 in, MEETS", "SIDE, 49 mm, FALLS_SHORT", "TRANSOM, -20 mm, FALLS_SHORT",
            "UNDERWATER, -200 mm, DOES_NOT_APPLY", "BOTTOM, -400 mm, DOES_NOT_APPLY" })
    void asksForFiftyMillimetres(OutletPlace place, String height, Standing expected) {
        judge(ExhaustOutletHeight.check(), outletAt(place, height)).is(expected);
    }

    @Test
    void theRaisedOutletMeets() {
        judge(ExhaustOutletHeight.check(), outletAt(OutletPlace.SIDE, "10 mm")).fallsShort().limit(50, "mm", 0).afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutHeightOrPlace() {
        judge(ExhaustOutletHeight.check(), Installation.empty()).cannotTell("exhaust.outlet.place", "exhaust.outlet.insideBottom.z");
    }
}
