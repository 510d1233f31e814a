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

class AboveBilgeOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "350 mm, MEETS", "0 mm, FALLS_SHORT" }) // 46 CFR 183.320(a)
    void standsAboveTheWater(String height, Standing standing) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getMounting().setHeightAboveBilge(Length.valueOf(height));
        judge(AboveBilgeOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheHeight() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        judge(AboveBilgeOnPassengerVessel.check(), record).cannotTell("mounting.heightAboveBilge");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(AboveBilgeOnPassengerVessel.check(), record).doesNotApply();
    }
}
