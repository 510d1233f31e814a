// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class AboveBilgeInAnyBoatTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "7 in, MEETS", "0 mm, FALLS_SHORT", "-20 mm, FALLS_SHORT", "1 mm, MEETS" }) // 46 CFR 183.320(a) as a yardstick
    void standsAboveTheWater(String height, Standing standing) {
        record.getMounting().setHeightAboveBilge(Length.valueOf(height));
        judge(AboveBilgeInAnyBoat.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheHeight() {
        judge(AboveBilgeInAnyBoat.check(), record).cannotTell("mounting.heightAboveBilge");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        judge(AboveBilgeInAnyBoat.check(), record).doesNotApply();
    }
}
