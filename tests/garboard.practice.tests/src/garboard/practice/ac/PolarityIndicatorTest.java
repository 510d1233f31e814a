// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__POLARITY_INDICATOR;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Question;

class PolarityIndicatorTest {

    @Test
    void answered() { // ISO 13297 6.10 as quoted
        Question.of(PolarityIndicator.check(), AC_OUTPUT__POLARITY_INDICATOR).at(CommissioningRecord::getAcOutput)
            .in(record -> Board.plate(record, "8 kVA", "120 V", PhaseSystem.SINGLE_PHASE)).wants(Answer.YES, "acOutput.polarityIndicator");
    }

    @Test
    void doesNotApplyToThreePhases() {
        judge(PolarityIndicator.check(), Board.set("25 kVA", "400 V", PhaseSystem.THREE_PHASE)).doesNotApply();
    }
}
