// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EMISSION_LABEL_MARINE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class EmissionLabelTest {

    @Test
    void answered() { // 40 CFR 1054.105, 1048.101
        Question.of(EmissionLabel.check(), GENERATOR_SET__EMISSION_LABEL_MARINE).at(CommissioningRecord::getGeneratorSet)
            .in(record -> record.getGeneratorSet().setFuel(FuelKind.GASOLINE)).demands(Answer.YES, "generatorSet.emissionLabelMarine");
    }

    @Test
    void doesNotApplyToDiesel() {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(EmissionLabel.check(), record).doesNotApply();
    }
}
