// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.OutletPlace;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustOutletHeeledTest {

    private static CommissioningRecord outletAt(CommissioningRecord boat, String x, String y, String z) {
        exhaust(boat).getOutlet().setPlace(OutletPlace.SIDE);
        Boat.place(exhaust(boat).getOutlet().getInsideBottom(), x, y, z);
        return boat;
    }

    // A side outlet 100 mm above the waterline goes under at 7 deg: h derived and recomputed independently
    @ParameterizedTest
    @CsvSource({ "7 deg, 0 deg, -0.0714, FALLS_SHORT", "7 deg, 2 deg, -0.2284, FALLS_SHORT", "0 deg, 0 deg, 0.1000, MEETS" })
    void aSideOutletGoesUnderSoon(String roll, String trim, double height, Standing expected) {
        judge(ExhaustOutletHeeled.check(), outletAt(Boat.motor(roll, trim), "-4.5 m", "1.40 m", "0.10 m")).is(expected)
            .measured(height, "m", 0.00005);
    }

    @Test
    void meetsAtTheWaterItself() {
        CommissioningRecord record = outletAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "100 mm");
        record.getVessel().setSinkage(Length.valueOf("100 mm"));
        judge(ExhaustOutletHeeled.check(), record).meets();
        record.getVessel().setSinkage(Length.valueOf("101 mm"));
        judge(ExhaustOutletHeeled.check(), record).fallsShort();
    }

    @Test
    void stepsBackWhereTheOutletIsTooLowUpright() {
        // common practice: 50 mm above the loaded waterline
        judge(ExhaustOutletHeeled.check(), outletAt(Boat.motor("7 deg", "0 deg"), "0 m", "1.40 m", "49 mm")).doesNotApply();
    }

    @Test
    void theRemedyOfATransomOutletDoesNotSendItToTheTransom() {
        CommissioningRecord record = outletAt(Boat.motor("7 deg", "0 deg"), "-4.5 m", "1.40 m", "0.10 m");
        assertThat(judge(ExhaustOutletHeeled.check(), record).verdict().remedy().orElseThrow().text()).contains("to the transom");
        exhaust(record).getOutlet().setPlace(OutletPlace.TRANSOM);
        assertThat(judge(ExhaustOutletHeeled.check(), record).verdict().remedy().orElseThrow().text()).doesNotContain("to the transom")
            .contains("closer to the centreline");
        CommissioningRecord amidships = outletAt(Boat.motor("0 deg", "3 deg"), "-4.5 m", "0 m", "0.10 m");
        exhaust(amidships).getOutlet().setPlace(OutletPlace.TRANSOM);
        assertThat(judge(ExhaustOutletHeeled.check(), amidships).fallsShort().verdict().remedy().orElseThrow().text()).doesNotContain("centreline");
    }

    @Test
    void theRaisedOutletMeets() {
        judge(ExhaustOutletHeeled.check(), outletAt(Boat.motor("7 deg", "2 deg"), "-4.5 m", "1.40 m", "0.10 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void sinkageTakesHeightAway() {
        CommissioningRecord record = outletAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "100 mm");
        record.getVessel().setSinkage(Length.valueOf("120 mm"));
        judge(ExhaustOutletHeeled.check(), record).fallsShort().measured(-20, "mm", 1e-6);
    }

    @Test
    void doesNotApplyToAnOutletMadeForUnderWater() {
        CommissioningRecord record = outletAt(Boat.motor("7 deg", "0 deg"), "0 m", "0 m", "-0.3 m");
        exhaust(record).getOutlet().setPlace(OutletPlace.UNDERWATER);
        judge(ExhaustOutletHeeled.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutPlaceHullOrAttitude() {
        CommissioningRecord record = Installation.empty();
        exhaust(record).getOutlet().setPlace(OutletPlace.TRANSOM);
        judge(ExhaustOutletHeeled.check(), record).cannotTell("exhaust.outlet.insideBottom.x", "exhaust.outlet.insideBottom.y",
            "exhaust.outlet.insideBottom.z", "vessel.hullKind", "vessel.designTrim");
    }
}
