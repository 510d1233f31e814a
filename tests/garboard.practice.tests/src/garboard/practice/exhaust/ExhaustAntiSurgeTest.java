// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AntiSurge;
import garboard.model.CommissioningRecord;
import garboard.model.OutletPlace;
import garboard.practice.testing.Installation;

class ExhaustAntiSurgeTest {

    private static CommissioningRecord guarded(OutletPlace place, AntiSurge guard) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).getOutlet().setPlace(place);
        exhaust(record).getOutlet().setAntiSurge(guard);
        return record;
    }

    // common practice: a flap alone never counts
    @ParameterizedTest
    @CsvSource({ "TRANSOM, SURGE_CHAMBER, MEETS", "SIDE, FLAP_AND_HIGH_CREST, MEETS", "TRANSOM, FLAP, FALLS_SHORT", "SIDE, NONE, FALLS_SHORT",
            "UNDERWATER, NONE, DOES_NOT_APPLY" })
    void aFlapAloneIsNoGuard(OutletPlace place, AntiSurge guard, Standing expected) {
        judge(ExhaustAntiSurge.check(), guarded(place, guard)).is(expected);
    }

    @Test
    void cannotTellWithoutTheGuard() {
        judge(ExhaustAntiSurge.check(), guarded(OutletPlace.SIDE, AntiSurge.NOT_ENTERED)).cannotTell("exhaust.outlet.antiSurge");
    }
}
