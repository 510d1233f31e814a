// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class ClampsOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.add(record, WaterSection.PUMP_TO_ENGINE);

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    private Judged clamps(int count) {
        hose.setClampsPerEnd(count);
        return judge(ClampsOfPassengerVessel.check(), record);
    }

    @Test
    void twoPass() {
        // 46 CFR 182.410(d): two clamps pass
        clamps(2).meets();
    }

    @Test
    void oneAsksForABead() {
        // 46 CFR 182.410(d): one clamp only on a suitable beaded or serrated pipe
        assertThat(clamps(1).fallsShort().verdict().sentence()).contains("beaded or serrated");
        clamps(1).afterRemedy().meets();
    }

    @Test
    void doesNotApplyToPipe() {
        hose.setKind(WaterHoseKind.RIGID_METAL_PIPE);
        clamps(0).doesNotApply();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        clamps(0).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheCount() {
        judge(ClampsOfPassengerVessel.check(), record).cannotTell("rawWater.hoses[hose-1].clampsPerEnd");
    }
}
