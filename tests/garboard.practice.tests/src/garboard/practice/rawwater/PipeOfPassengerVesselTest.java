// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class PipeOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.add(record, WaterSection.PUMP_TO_ENGINE);

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    private Judged kind(WaterHoseKind kind) {
        hose.setKind(kind);
        return judge(PipeOfPassengerVessel.check(), record);
    }

    @Test
    void rigidPlasticFallsShort() {
        // 46 CFR 182.710, 182.720(a): no rigid plastic pipe in a vital system
        kind(WaterHoseKind.RIGID_PLASTIC_PIPE).fallsShort();
    }

    @Test
    void metalAndHoseMeet() {
        kind(WaterHoseKind.RIGID_METAL_PIPE).meets();
        kind(WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE).meets();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.FISHING);
        kind(WaterHoseKind.RIGID_PLASTIC_PIPE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(PipeOfPassengerVessel.check(), record).cannotTell("rawWater.hoses[hose-1].kind");
    }
}
