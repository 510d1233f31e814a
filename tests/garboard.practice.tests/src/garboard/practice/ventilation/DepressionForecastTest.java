// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

class DepressionForecastTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged fan(String flow, String area) {
        record.getVentilation().setNaturalDraught(Answer.NO);
        record.getVentilation().setFanFlow(VolumeFlow.valueOf(flow));
        record.getVentilation().setSupplyAreaTotal(Area.valueOf(area));
        return judge(DepressionForecast.check(), record);
    }

    @Test
    void sixHundredSquareCentimetresForAFanOfATwentyKilowattSet() {
        // recomputed from dp = K rho v2 / 2, K 2.5, 1.13 kg/m3: 63 Pa are 6.68 m/s, 23.4 m3/min then need 584 cm2
        fan("23.4 m3/min", "585 cm2").meets().measured(62.8, "Pa", 0.05).limit(63, "Pa", 1e-9);
        fan("23.4 m3/min", "583 cm2").fallsShort();
    }

    @Test
    void combustionAirComesThroughTheSameOpening() {
        record.getGeneratorSet().setCombustionAirFlow(VolumeFlow.of(1.8, "m3/min"));
        // recomputed from the same for 25.2 m3/min
        fan("23.4 m3/min", "585 cm2").fallsShort().measured(72.8, "Pa", 0.05);
    }

    @Test
    void remedyNamesTheArea() {
        fan("23.4 m3/min", "300 cm2").afterRemedy().meets();
        // 583.97 cm2, to the next whole
        assertThat(record.getVentilation().getSupplyAreaTotal()).isEqualTo(Area.of(584, "cm2"));
    }

    @Test
    void makersDepressionReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMaximumDepression(PressureDifference.of(30, "Pa"));
        fan("23.4 m3/min", "585 cm2").fallsShort().limitFromMaker();
    }

    @Test
    void doesNotApplyToNaturalDraught() {
        fan("23.4 m3/min", "1 cm2");
        record.getVentilation().setNaturalDraught(Answer.YES);
        judge(DepressionForecast.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutFanAndOpening() {
        record.getVentilation().setNaturalDraught(Answer.NO);
        judge(DepressionForecast.check(), record).cannotTell("ventilation.fanFlow", "ventilation.supplyAreaTotal");
    }
}
