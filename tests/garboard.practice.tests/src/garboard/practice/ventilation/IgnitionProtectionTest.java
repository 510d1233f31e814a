// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class IgnitionProtectionTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged protection(Answer components, Answer blower) {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVentilation().setIgnitionProtectedComponents(components);
        record.getVentilation().setBlowerIgnitionProtected(blower);
        return judge(IgnitionProtection.check(), record);
    }

    @Test
    void blowerAndComponentsCount() {
        // 33 CFR 183.410
        protection(Answer.YES, Answer.YES).meets();
        protection(Answer.YES, Answer.NO).fallsShort();
        protection(Answer.NO, Answer.UNANSWERED).fallsShort();
    }

    @Test
    void doesNotApplyToDiesel() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(IgnitionProtection.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnswers() {
        protection(Answer.UNANSWERED, Answer.YES).cannotTell("ventilation.ignitionProtectedComponents");
        protection(Answer.YES, Answer.UNANSWERED).cannotTell("ventilation.blowerIgnitionProtected");
    }
}
