// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.StrainerPickUp;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class PickUpDoesNotScoopTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged kind(StrainerPickUp kind) {
        record.getRawWater().getPickUp().setKind(kind);
        return judge(PickUpDoesNotScoop.check(), record);
    }

    @Test
    void forwardScoopFallsShortOnEveryHull() {
        // trade press, quoted: no scoops on generator sets
        kind(StrainerPickUp.SCOOP_FACING_FORWARD).fallsShort();
        record.getVessel().setHullKind(HullKind.MOTOR_DISPLACEMENT);
        kind(StrainerPickUp.SCOOP_FACING_FORWARD).fallsShort().afterRemedy().meets();
    }

    @Test
    void roundFlushOrNoStrainerMeets() {
        kind(StrainerPickUp.ROUND_NON_DIRECTIONAL).meets();
        kind(StrainerPickUp.FLUSH).meets();
        kind(StrainerPickUp.NONE).meets();
    }

    @Test
    void scoopFacingAftMeetsOnDisplacementHullsOnly() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        kind(StrainerPickUp.SCOOP_FACING_AFT).meets();
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        kind(StrainerPickUp.SCOOP_FACING_AFT).fallsShort();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(PickUpDoesNotScoop.check(), record).cannotTell("rawWater.pickUp.kind");
    }

    @Test
    void cannotTellOfAScoopFacingAftWithoutTheHull() {
        kind(StrainerPickUp.SCOOP_FACING_AFT).cannotTell("vessel.hullKind");
    }
}
