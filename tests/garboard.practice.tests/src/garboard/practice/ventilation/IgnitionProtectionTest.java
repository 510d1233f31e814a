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
        record.getVessel().setGasolineEngineAboard(Answer.YES);
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
    void aGasolineSetHasPartsToBeProtected() {
        protection(Answer.NOT_APPLICABLE, Answer.YES).fallsShort();
    }

    @Test
    void aBlowerThatIsNotThereLightsNothing() {
        protection(Answer.YES, Answer.NOT_APPLICABLE).meets();
    }

    @Test
    void aDieselSetInTheSpaceOfAGasolineEngineCountsToo() {
        // 33 CFR 183.410(a): any electrical component in the space, whatever it drives or starts
        protection(Answer.NO, Answer.UNANSWERED);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(IgnitionProtection.check(), record).fallsShort();
        record.getVentilation().setIgnitionProtectedComponents(Answer.YES);
        judge(IgnitionProtection.check(), record).meets();
    }

    @Test
    void aDieselSetThatStandsApartIsMarkedSo() {
        protection(Answer.NOT_APPLICABLE, Answer.UNANSWERED);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(IgnitionProtection.check(), record).meets();
    }

    @Test
    void doesNotApplyToABoatWithoutGasoline() {
        protection(Answer.NO, Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(IgnitionProtection.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnswers() {
        protection(Answer.UNANSWERED, Answer.YES).cannotTell("ventilation.ignitionProtectedComponents");
        protection(Answer.YES, Answer.UNANSWERED).cannotTell("ventilation.blowerIgnitionProtected");
    }
}
