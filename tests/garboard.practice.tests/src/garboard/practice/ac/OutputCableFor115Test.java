// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.InsulationRating;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Installation;

class OutputCableFor115Test {

    private static CommissioningRecord cable(String apparent, String size, Answer engineSpace, int together) {
        CommissioningRecord record = Board.set(apparent, "400 V", PhaseSystem.THREE_PHASE);
        CableRun cable = record.getAcOutput().getOutputCable();
        cable.setConductorSize(size);
        cable.setInsulation(InsulationRating.C105);
        cable.setInEngineSpace(engineSpace);
        cable.setConductorsInBundle(together);
        return record;
    }

    // 46 CFR Table 111.60-7: 36.1 A -> 41.5 A. 33 CFR 183.425 Table 5: 10 AWG 105 degC, engine space, three conductors 35.7 A; 6 AWG 71.4 A
    @ParameterizedTest
    @CsvSource({ "10 AWG, YES, 3, 35.7, FALLS_SHORT", "6 AWG, YES, 3, 71.4, MEETS", "10 AWG, NO, 2, 60, MEETS", "6 mm2, NO, 2, 60, MEETS" })
    void carries115PerCent(String size, Answer engineSpace, int together, double allowedA, Standing standing) {
        judge(OutputCableFor115.check(), cable("25 kVA", size, engineSpace, together)).is(standing).measured(allowedA, "A", 0.05)
            .limit(41.5, "A", 0.05);
    }

    @Test
    void remedyIsTheNextSizeThatWillDo() {
        CommissioningRecord record = cable("25 kVA", "10 AWG", Answer.YES, 3);
        judge(OutputCableFor115.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getOutputCable().getConductorSize()).isEqualTo("8 AWG"); // 80 A x 0.85 x 0.70 = 47.6 A
    }

    @Test
    void aThreadIsTooThin() {
        judge(OutputCableFor115.check(), cable("25 kVA", "22 AWG", Answer.NO, 1)).fallsShort();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(OutputCableFor115.check(), Installation.empty()).cannotTell("acOutput.outputCable.conductorSize", "acOutput.outputCable.insulation",
            "acOutput.outputCable.inEngineSpace", "acOutput.outputCable.conductorsInBundle", "generatorSet.ratedVoltage", "generatorSet.phases");
    }

    @Test
    void doesNotApplyWhereTheSizeCannotBeRead() {
        judge(OutputCableFor115.check(), cable("25 kVA", "thick", Answer.NO, 1)).doesNotApply();
    }
}
