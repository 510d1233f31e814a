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
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustCrestHeightHeeledTest {

    private static CommissioningRecord crestAt(CommissioningRecord boat, String x, String y, String z) {
        Boat.place(exhaust(boat).getCrest().getInsideBottom(), x, y, z);
        return boat;
    }

    // h = x sin(theta) - y sin(phi) cos(theta) + z cos(phi) cos(theta), derived and recomputed independently; margins common practice
    @ParameterizedTest
    @CsvSource({ "S, 0 m, 0.10 m, 0.45 m, 30 deg, 0 deg, 0.3397, MEETS", "S, 0 m, 1.0 m, 0.45 m, 30 deg, 0 deg, -0.1103, FALLS_SHORT",
            "S, -2.0 m, 0.60 m, 0.45 m, 25 deg, 3 deg, 0.0494, FALLS_SHORT", "M, 0 m, 1.2 m, 0.30 m, 7 deg, 0 deg, 0.1515, MEETS" })
    void findsTheWorstAttitude(String kind, String x, String y, String z, String heel, String trim, double height, Standing expected) {
        judge(ExhaustCrestHeightHeeled.check(), crestAt(Boat.of(kind, heel, trim), x, y, z)).is(expected).measured(height, "m", 0.00005);
    }

    @ParameterizedTest
    @CsvSource({ "S, 200 mm, MEETS", "S, 199 mm, FALLS_SHORT", "M, 150 mm, MEETS", "M, 149 mm, FALLS_SHORT" })
    void meetsExactlyAtTheLimit(String kind, String z, Standing expected) {
        judge(ExhaustCrestHeightHeeled.check(), crestAt(Boat.of(kind, "0 deg", "0 deg"), "0 m", "0 m", z)).is(expected);
    }

    @Test
    void theRaisedCrestMeets() {
        // (0.20 m, x 1.5, y 0.3, 30 deg, 3 deg) needs 0.4952 m, recomputed independently
        CommissioningRecord record = crestAt(Boat.sailing("30 deg", "3 deg"), "1.5 m", "0.3 m", "0.2 m");
        judge(ExhaustCrestHeightHeeled.check(), record).fallsShort().afterRemedy().meets();
        assertThat(exhaust(record).getCrest().getInsideBottom().getZ().in("mm")).isEqualTo(500);
    }

    @Test
    void sinkageTakesHeightAway() {
        CommissioningRecord record = crestAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "180 mm");
        record.getVessel().setSinkage(Length.valueOf("40 mm"));
        judge(ExhaustCrestHeightHeeled.check(), record).fallsShort().measured(140, "mm", 1e-6);
    }

    @Test
    void cannotTellWithoutPlaceHullOrAttitude() {
        judge(ExhaustCrestHeightHeeled.check(), Installation.empty()).cannotTell("exhaust.crest.insideBottom.x", "exhaust.crest.insideBottom.y",
            "exhaust.crest.insideBottom.z", "vessel.hullKind", "vessel.designTrim");
        CommissioningRecord record = crestAt(Boat.motor("7 deg", "0 deg"), "0 m", "0 m", "1 m");
        record.getVessel().setDesignRoll(null);
        judge(ExhaustCrestHeightHeeled.check(), record).cannotTell("vessel.designRoll");
    }
}
