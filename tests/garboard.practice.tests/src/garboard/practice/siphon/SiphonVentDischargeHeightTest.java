// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.loopWithHose;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.VentHoseEnd;
import garboard.model.VesselService;
import garboard.quantity.Length;

class SiphonVentDischargeHeightTest {

    private static CommissioningRecord passengerVessel(String height) {
        CommissioningRecord record = loopWithHose(VentHoseEnd.OVERBOARD);
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        siphonBreak(record).setVentHoseEndHeight(Length.valueOf(height));
        return record;
    }

    // 46 CFR 179.350(c): a means of closing is required below a line 150 mm (6 in) above the deepest load waterline
    @ParameterizedTest
    @CsvSource({ "-300 mm, FALLS_SHORT", "149 mm, FALLS_SHORT", "150 mm, MEETS", "6 in, MEETS", "5 7/8 in, FALLS_SHORT" })
    void lowerThanOneHundredAndFiftyMillimetresTheLawWantsAValve(String height, Standing expected) {
        judge(SiphonVentDischargeHeight.check(), passengerVessel(height)).is(expected).limit(150, "mm", 0);
    }

    @Test
    void theRaisedOpeningMeets() {
        judge(SiphonVentDischargeHeight.check(), passengerVessel("149 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToOtherVesselsOrOtherEnds() {
        CommissioningRecord record = passengerVessel("10 mm");
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(SiphonVentDischargeHeight.check(), record).doesNotApply();
        CommissioningRecord cockpit = passengerVessel("10 mm");
        siphonBreak(cockpit).setVentHose(VentHoseEnd.COCKPIT);
        judge(SiphonVentDischargeHeight.check(), cockpit).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheHeightOrTheService() {
        CommissioningRecord record = passengerVessel("10 mm");
        siphonBreak(record).setVentHoseEndHeight(null);
        judge(SiphonVentDischargeHeight.check(), record).cannotTell("rawWater.siphonBreak.ventHoseEndHeight");
        CommissioningRecord unknown = passengerVessel("200 mm");
        unknown.getVessel().setService(VesselService.NOT_ENTERED);
        judge(SiphonVentDischargeHeight.check(), unknown).cannotTell("vessel.service");
    }
}
