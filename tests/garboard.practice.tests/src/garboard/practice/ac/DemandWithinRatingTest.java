// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;

class DemandWithinRatingTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged set(String power) {
        record.getGeneratorSet().setRatedPower(Power.valueOf(power));
        return judge(DemandWithinRating.check(), record);
    }

    @Test
    void theBusiestConditionCounts() {
        // IMO EEDI guideline form, P ku: 10 kW x 0.8 + 2 kW; at night 3 kW
        Board.load(record, "range", "10 kW", "0.8").setCondition("evening");
        Board.load(record, "heating", "2 kW", "1");
        Board.load(record, "lights", "1 kW", "1").setCondition("night");
        assertThat(set("10 kW").meets().measured(10, "kW", 1e-9).verdict().sentence()).contains("evening");
        set("9.9 kW").fallsShort();
        set("13.5 hp").meets(); // 10.07 kW
    }

    @Test
    void remedyNamesTheSetThatHasAReserve() {
        Board.load(record, "range", "11.43 kW", "1");
        // common practice: 11.43 kW -> 14.3 kW at 80 %, to the next half kilowatt
        assertThat(set("10 kW").fallsShort().verdict().remedy().orElseThrow().text()).contains("1.43 kW").contains("14.5 kW");
    }

    @Test
    void cannotTellWithoutLoadsOrRating() {
        judge(DemandWithinRating.check(), record).cannotTell("acOutput.loads.power", "acOutput.loads.demandFactor", "generatorSet.ratedPower");
        Board.load(record, "range", "10 kW", "0.8").setDemandFactor(null);
        judge(DemandWithinRating.check(), record).cannotTell("acOutput.loads[0].demandFactor", "generatorSet.ratedPower");
    }
}
