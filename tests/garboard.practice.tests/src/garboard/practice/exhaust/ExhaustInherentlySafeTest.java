// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class ExhaustInherentlySafeTest {

    private static CommissioningRecord crests(CommissioningRecord boat, String riser, String crest) {
        exhaust(boat).getRiser().getDryCrestInside().setZ(Length.valueOf(riser));
        exhaust(boat).getCrest().getInsideBottom().setZ(Length.valueOf(crest));
        return boat;
    }

    // marine trade press: water spills overboard where the crest behind the muffler is the lower one
    @ParameterizedTest
    @CsvSource({ "500 mm, 450 mm, MEETS", "450 mm, 450 mm, FALLS_SHORT", "300 mm, 450 mm, FALLS_SHORT", "20 in, 500 mm, MEETS" })
    void theRiserIsTheHigherCrest(String riser, String crest, Standing expected) {
        judge(ExhaustInherentlySafe.check(), crests(Boat.motor("15 deg", "3 deg"), riser, crest)).is(expected);
    }

    @Test
    void doesNotApplyUnderSail() {
        judge(ExhaustInherentlySafe.check(), crests(Boat.sailing("30 deg", "3 deg"), "200 mm", "450 mm")).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheCrests() {
        judge(ExhaustInherentlySafe.check(), Boat.motor("15 deg", "3 deg")).cannotTell("exhaust.riser.dryCrestInside.z",
            "exhaust.crest.insideBottom.z");
    }
}
