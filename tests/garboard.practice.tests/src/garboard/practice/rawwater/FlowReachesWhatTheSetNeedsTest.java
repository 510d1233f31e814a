// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

class FlowReachesWhatTheSetNeedsTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSetOfAHundredHorsepower() {
        record.getGeneratorSet().setCooling(Cooling.HEAT_EXCHANGER);
        record.getGeneratorSet().setShaftPower(Power.of(100, "hp"));
    }

    private Judged flow(String measured) {
        record.getRawWater().setMeasuredFlow(VolumeFlow.valueOf(measured));
        return judge(FlowReachesWhatTheSetNeeds.check(), record);
    }

    @Test
    void heatExchangerNeedsSixtyFiveLitresForAHundredHorsepower() {
        // chandler's guide, quoted: 65 to 70 L/min for 100 bhp
        flow("64.9 L/min").fallsShort().limit(65, "L/min", 1e-6);
        flow("65 L/min").meets();
    }

    @Test
    void directCoolingNeedsThirtySix() {
        // chandler's guide, quoted: 36 to 39 L/min for 100 bhp
        record.getGeneratorSet().setCooling(Cooling.DIRECT_RAW_WATER);
        flow("35.9 L/min").fallsShort().limit(36, "L/min", 1e-6);
        flow("36 L/min").meets();
    }

    @Test
    void ordinarySetMeets() {
        // 24.43 L/min for 22.47 kW are 1.087 L/min for each kW; the guide's least is 0.872 (65 L/min over 74.57 kW)
        record.getGeneratorSet().setShaftPower(Power.of(22.47, "kW"));
        flow("24.43 L/min").meets().limit(19.6, "L/min", 0.05);
    }

    @Test
    void uncertainReadingNearTheLimitIsBorderline() {
        flow("65.5 L/min ±2 %").is(Standing.BORDERLINE);
    }

    @Test
    void makersFlowReplacesTheGuide() {
        record.getGeneratorSet().getMakerLimits().setMinimumRawWaterFlow(VolumeFlow.of(70, "L/min"));
        record.getGeneratorSet().setShaftPower(null);
        flow("69 L/min").fallsShort().limitFromMaker();
        flow("70 L/min").meets();
    }

    @Test
    void cannotTellWithoutPower() {
        record.getGeneratorSet().setShaftPower(null);
        flow("30 L/min").cannotTell("generatorSet.shaftPower");
    }

    @Test
    void doesNotApplyToKeelCooling() {
        record.getGeneratorSet().setCooling(Cooling.KEEL_COOLED);
        flow("1 L/min").doesNotApply();
    }
}
