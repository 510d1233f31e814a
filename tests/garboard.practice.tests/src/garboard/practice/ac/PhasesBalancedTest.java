// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class PhasesBalancedTest {

    private final CommissioningRecord record = Board.set("60 kVA", "400 V", PhaseSystem.THREE_PHASE);

    private Judged phases(String first, String second, String third) {
        Board.load(record, "a", first, "1").setPhase("L1");
        Board.load(record, "b", second, "1").setPhase("L2");
        Board.load(record, "c", third, "1").setPhase("L3");
        return judge(PhasesBalanced.check(), record);
    }

    // definition (max - min) / max: 36/33/30 -> 16.7 %; common practice: 25 %
    @ParameterizedTest
    @CsvSource({ "3.6 kW, 3.3 kW, 3.0 kW, 16.67, MEETS", "4 kW, 3.5 kW, 3 kW, 25, MEETS", "4 kW, 3.5 kW, 2.9 kW, 27.5, FALLS_SHORT" })
    void atMostAQuarter(String first, String second, String third, double perCent, Standing standing) {
        phases(first, second, third).is(standing).measured(perCent, "%", 0.005);
    }

    @Test
    void loadsOfNothingAreBalanced() {
        phases("0 W", "0 W", "0 W").meets();
    }

    @Test
    void stepsBackWhereAPhaseIsOverloaded() {
        phases("21 kW", "1 kW", "1 kW").doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(PhasesBalanced.check(), Installation.empty()).cannotTell("generatorSet.phases", "acOutput.loads.power", "acOutput.loads.demandFactor");
    }

    @Test
    void doesNotApplyToASinglePhase() {
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        phases("3 kW", "1 kW", "1 kW").doesNotApply();
    }
}
