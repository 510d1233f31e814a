// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

class SuctionVelocityTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.addSuction(record);

    private Judged velocity(String flow, String bore) {
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf(flow));
        hose.setBore(Length.valueOf(bore));
        return judge(SuctionVelocity.check(), record);
    }

    @Test
    void ordinaryHoseMeets() {
        // continuity: 24.5 L/min in 19.05 mm is 1.433 m/s, in 25.4 mm 0.806 m/s
        velocity("24.5 L/min", "19.05 mm").meets().measured(1.433, "m/s", 0.0005);
        velocity("24.5 L/min", "1 in").meets().measured(0.806, "m/s", 0.0005);
    }

    @Test
    void twoMetresPerSecondIsTheLimit() {
        // pump-piping tables, quoted: suction 0.6 to 1.5 m/s, not above 2.0; 3/4 in passes 34.2 L/min at 2.0 m/s
        velocity("34.3 L/min", "3/4 in").fallsShort().limit(2.0, "m/s", 1e-9);
        velocity("34.2 L/min", "3/4 in").meets();
    }

    @Test
    void remedyIsTheNextHoseForOneAndAHalfMetresPerSecond() {
        // 24.5 L/min at 1.5 m/s needs 18.6 mm: the next hose is 3/4 in, 19.05 mm
        Judged verdict = velocity("24.5 L/min", "12.7 mm").fallsShort();
        verdict.afterRemedy().meets();
        assertThat(hose.getBore().in("mm")).isEqualTo(19.05);
    }

    @Test
    void noHoseIsSoWideThatRemedyStaysGeneral() {
        assertThat(velocity("5000 L/min", "127 mm").fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void otherSectionsAreNotItsMatter() {
        hose.setSection(WaterSection.ENGINE_TO_INJECTION);
        assertThat(Judged.all(SuctionVelocity.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutBoreAndFlow() {
        judge(SuctionVelocity.check(), record).cannotTell("rawWater.hoses[hose-1].bore", "rawWater.pump.ratedFlow");
    }
}
