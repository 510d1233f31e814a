// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.OutletPlace;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;

class ExhaustSubmergedOutletCrestTest {

    private static CommissioningRecord outletAt(CommissioningRecord boat, OutletPlace place, String z) {
        exhaust(boat).getOutlet().setPlace(place);
        Boat.place(exhaust(boat).getOutlet().getInsideBottom(), "0 m", "0 m", z);
        return boat;
    }

    private static CommissioningRecord crestAt(CommissioningRecord record, Answer vented, String y, String z) {
        exhaust(record).getCrest().setVented(vented);
        Boat.place(exhaust(record).getCrest().getInsideBottom(), "0 m", y, z);
        return record;
    }

    private static CommissioningRecord drowned(String heel) {
        return outletAt(Boat.sailing(heel, "0 deg"), OutletPlace.UNDERWATER, "-300 mm");
    }

    // heights of a siphon break: 12 in upright, marine trade press, 2017; 8 in at heel, Gerr; that the crest obeys them: common practice
    @ParameterizedTest
    @CsvSource({ "NO, 0.10 m, 0.45 m, 30 deg, MEETS", "NO, 1.0 m, 0.45 m, 30 deg, FALLS_SHORT", "YES, 1.0 m, 0.45 m, 30 deg, MEETS",
            "NO, 0 m, 290 mm, 0 deg, FALLS_SHORT", "NO, 0 m, 300 mm, 0 deg, MEETS", "NO, 0 m, 12 in, 0 deg, MEETS" })
    void theCrestKeepsTheHeightsOfASiphonBreakOrIsVented(Answer vented, String y, String z, String heel, Standing expected) {
        judge(ExhaustSubmergedOutletCrest.check(), crestAt(drowned(heel), vented, y, z)).is(expected);
    }

    @Test
    void anOutletThatStaysDryAsksForNothing() {
        judge(ExhaustSubmergedOutletCrest.check(), outletAt(Boat.motor("7 deg", "2 deg"), OutletPlace.TRANSOM, "100 mm")).meets();
    }

    @Test
    void anOutletThatRollsUnderCountsAsUnderWater() {
        CommissioningRecord record = outletAt(Boat.motor("7 deg", "0 deg"), OutletPlace.SIDE, "0.10 m");
        Boat.place(exhaust(record).getOutlet().getInsideBottom(), "-4.5 m", "1.40 m", "0.10 m");
        judge(ExhaustSubmergedOutletCrest.check(), crestAt(record, Answer.NO, "0 m", "0.2 m")).fallsShort().limit(300, "mm", 0);
    }

    @Test
    void theRaisedCrestMeets() {
        judge(ExhaustSubmergedOutletCrest.check(), crestAt(drowned("30 deg"), Answer.NO, "1.0 m", "0.1 m")).fallsShort().afterRemedy().meets();
        judge(ExhaustSubmergedOutletCrest.check(), crestAt(drowned("0 deg"), Answer.NO, "0 m", "0.1 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void oneCrestIsToldOnce() {
        CommissioningRecord low = crestAt(drowned("30 deg"), Answer.NO, "1.0 m", "0.1 m");
        judge(ExhaustCrestHeight.check(), low).doesNotApply();
        judge(ExhaustCrestHeightHeeled.check(), low).doesNotApply();
        // one remedy does for all three
        judge(ExhaustSubmergedOutletCrest.check(), low).fallsShort().afterRemedy().meets();
        judge(ExhaustCrestHeight.check(), low).meets();
        judge(ExhaustCrestHeightHeeled.check(), low).meets();
    }

    @Test
    void aVentAloneLeavesTheHeightToBeTold() {
        CommissioningRecord vented = crestAt(drowned("0 deg"), Answer.YES, "0 m", "0.1 m");
        judge(ExhaustSubmergedOutletCrest.check(), vented).meets();
        judge(ExhaustCrestHeight.check(), vented).fallsShort();
    }

    @Test
    void cannotTellWithoutOutletOrCrest() {
        judge(ExhaustSubmergedOutletCrest.check(), Installation.empty()).cannotTell("exhaust.outlet.place", "vessel.hullKind", "vessel.designTrim");
        judge(ExhaustSubmergedOutletCrest.check(), drowned("30 deg")).cannotTell("exhaust.crest.vented", "exhaust.crest.insideBottom.x",
            "exhaust.crest.insideBottom.y", "exhaust.crest.insideBottom.z");
        CommissioningRecord record = crestAt(drowned("30 deg"), Answer.NO, "0 m", "1 m");
        exhaust(record).getCrest().getInsideBottom().setZ(null);
        judge(ExhaustSubmergedOutletCrest.check(), record).cannotTell("exhaust.crest.insideBottom.z");
        CommissioningRecord noOutlet = outletAt(Boat.motor("7 deg", "0 deg"), OutletPlace.SIDE, "0.1 m");
        exhaust(noOutlet).getOutlet().getInsideBottom().setY(null);
        judge(ExhaustSubmergedOutletCrest.check(), noOutlet).cannotTell("exhaust.outlet.insideBottom.y");
    }
}
