// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__DC_NEGATIVE_ISOLATED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.HullMaterial;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ReturnInsulatedTest {

    @Test
    void answered() { // common practice
        Question.of(ReturnInsulated.check(), MOUNTING__DC_NEGATIVE_ISOLATED).at(CommissioningRecord::getMounting)
            .in(record -> record.getVessel().setHullMaterial(HullMaterial.ALUMINIUM)).wants(Answer.YES, "mounting.dcNegativeIsolated");
    }

    @Test
    void doesNotApplyToPlasticAndWood() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setHullMaterial(HullMaterial.WOOD);
        judge(ReturnInsulated.check(), record).doesNotApply();
    }
}
