// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FittingMaterial;
import garboard.model.Seacock;
import garboard.model.ValveKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class SeacockOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        seacock.setCloseToHull(Answer.YES);
        seacock.setMaterial(FittingMaterial.BRONZE);
    }

    private Judged intake(String height, ValveKind kind) {
        record.getRawWater().getPickUp().getPosition().setZ(Length.valueOf(height));
        seacock.setKind(kind);
        return judge(SeacockOfPassengerVessel.check(), record);
    }

    @Test
    void valveIsRequiredBelowTheLine() {
        // 46 CFR 179.350: below 150 mm above the deepest load waterline; -300 and 149 mm required, 150 mm not
        intake("-300 mm", ValveKind.NONE).fallsShort();
        intake("149 mm", ValveKind.NONE).fallsShort();
        intake("150 mm", ValveKind.NONE).meets();
        intake("-300 mm", ValveKind.FLANGED_SEACOCK).meets();
    }

    @Test
    void valveAwayFromTheHullFallsShort() {
        seacock.setCloseToHull(Answer.NO);
        intake("-300 mm", ValveKind.FLANGED_SEACOCK).fallsShort();
    }

    @Test
    void castIronFallsShort() {
        seacock.setMaterial(FittingMaterial.CAST_IRON);
        intake("-300 mm", ValveKind.FLANGED_SEACOCK).fallsShort();
    }

    @Test
    void engineExhaustIsExempt() {
        // 46 CFR 179.350: exhaust outlet at 50 mm exempt; only the intake is looked at
        record.getExhaust().getOutlet().getInsideBottom().setZ(Length.of(50, "mm"));
        intake("150 mm", ValveKind.NONE).meets();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        intake("-300 mm", ValveKind.NONE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheValve() {
        intake("-300 mm", ValveKind.NOT_ENTERED).cannotTell("rawWater.seacock.kind");
        seacock.setCloseToHull(Answer.UNANSWERED);
        intake("-300 mm", ValveKind.FLANGED_SEACOCK).cannotTell("rawWater.seacock.closeToHull");
    }

    @Test
    void cannotTellWithoutTheService() {
        record.getVessel().setService(VesselService.NOT_ENTERED);
        intake("-300 mm", ValveKind.NONE).cannotTell("vessel.service");
    }
}
