// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

class DischargeVelocityTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.add(record, WaterSection.PUMP_TO_ENGINE);

    private Judged velocity(String flow, String bore) {
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf(flow));
        hose.setBore(Length.valueOf(bore));
        return judge(DischargeVelocity.check(), record);
    }

    @Test
    void threeMetresPerSecondIsTheLimit() {
        // pump-piping tables, quoted: discharge 1.5 to 3.0 m/s; continuity: 1/2 in carries 22.8 L/min at 3.0 m/s
        velocity("22.9 L/min", "1/2 in").fallsShort().limit(3.0, "m/s", 1e-9);
        velocity("22.8 L/min", "1/2 in").meets();
    }

    @Test
    void remedyIsTheNextHose() {
        velocity("24.5 L/min", "1/2 in").afterRemedy().meets();
        // 24.5 L/min at 3.0 m/s needs 13.2 mm; the next hose is 5/8 in, 15.9 mm
        assertThat(hose.getBore().in("mm")).isCloseTo(15.9, within(0.05));
    }

    @Test
    void suctionIsNotItsMatter() {
        hose.setSection(WaterSection.SUCTION);
        assertThat(Judged.all(DischargeVelocity.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutTheFlow() {
        hose.setBore(Length.of(25.4, "mm"));
        judge(DischargeVelocity.check(), record).cannotTell("rawWater.pump.ratedFlow");
    }
}
