// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Ventilation;
import garboard.practice.testing.Installation;

class SupplyClearOfExhaustOutletTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setClearOfExhaustOutlet(Answer.YES);
        judge(SupplyClearOfExhaustOutlet.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setClearOfExhaustOutlet(Answer.NO);
        judge(SupplyClearOfExhaustOutlet.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SupplyClearOfExhaustOutlet.check(), record).cannotTell("ventilation.clearOfExhaustOutlet");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        ventilation.setClearOfExhaustOutlet(Answer.NOT_APPLICABLE);
        judge(SupplyClearOfExhaustOutlet.check(), record).doesNotApply();
    }
}
