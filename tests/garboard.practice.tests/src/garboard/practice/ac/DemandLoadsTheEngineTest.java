// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Power;

class DemandLoadsTheEngineTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselSet() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setRatedPower(Power.of(16, "kW"));
    }

    // common practice: 30 %; night 3.0 kW on a 16 kW set 19 %
    @Test
    void theLightestConditionCounts() {
        Board.load(record, "heating", "3.0 kW", "1");
        Board.load(record, "range", "8 kW", "1").setCondition("evening");
        Board.load(record, "clock", "0 kW", "1").setCondition("night");
        assertThat(judge(DemandLoadsTheEngine.check(), record).fallsShort().measured(18.75, "%", 1e-9).verdict().sentence()).contains("night");
    }

    @Test
    void exactlyThirtyPerCent() {
        Board.load(record, "heating", "4.8 kW", "1");
        judge(DemandLoadsTheEngine.check(), record).meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DemandLoadsTheEngine.check(), record).cannotTell("acOutput.loads.power", "acOutput.loads.demandFactor");
    }

    @Test
    void doesNotApplyToGasolineSets() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        judge(DemandLoadsTheEngine.check(), record).doesNotApply();
    }
}
