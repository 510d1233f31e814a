// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Power;

class DemandLeavesReserveTest {

    private final CommissioningRecord record = Installation.empty();

    // common practice: 70 to 80 % of the rating: 11.43 kW on a 16 kW set 71 %
    @ParameterizedTest
    @CsvSource({ "11.43 kW, 16 kW, 71.4, MEETS", "8 kW, 10 kW, 80, MEETS", "8.1 kW, 10 kW, 81, FALLS_SHORT" })
    void atMostFourFifths(String demand, String rating, double perCent, Standing standing) {
        Board.load(record, "all", demand, "1");
        record.getGeneratorSet().setRatedPower(Power.valueOf(rating));
        judge(DemandLeavesReserve.check(), record).is(standing).measured(perCent, "%", 0.05);
    }

    @Test
    void stepsBackWhereTheLoadsAreBeyondTheRating() {
        Board.load(record, "all", "11 kW", "1");
        record.getGeneratorSet().setRatedPower(Power.of(10, "kW"));
        judge(DemandLeavesReserve.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DemandLeavesReserve.check(), record).cannotTell("acOutput.loads.power", "acOutput.loads.demandFactor", "generatorSet.ratedPower");
    }
}
