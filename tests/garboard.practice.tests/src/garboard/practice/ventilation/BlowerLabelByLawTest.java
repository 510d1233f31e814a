// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.Ventilation;
import garboard.practice.testing.Installation;
import garboard.quantity.Area;
import garboard.quantity.Volume;

class BlowerLabelByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        ventilation.setCrankingMotorFitted(Answer.YES);
        ventilation.setNetVolume(Volume.of(20, "ft3"));
        ventilation.setOpenAreaToAtmosphere(Area.of(0));
    }

    // 33 CFR 183.610(f)
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setBlowerLabelAtEachStart(Answer.YES);
        judge(BlowerLabelByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setBlowerLabelAtEachStart(Answer.NO);
        judge(BlowerLabelByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(BlowerLabelByLaw.check(), record).cannotTell("ventilation.blowerLabelAtEachStart");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        ventilation.setBlowerLabelAtEachStart(Answer.NOT_APPLICABLE);
        judge(BlowerLabelByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyToDiesel() {
        ventilation.setBlowerLabelAtEachStart(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowerLabelByLaw.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutACrankingMotor() {
        ventilation.setBlowerLabelAtEachStart(Answer.NO);
        ventilation.setCrankingMotorFitted(Answer.NO);
        judge(BlowerLabelByLaw.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyInTheOpen() {
        ventilation.setBlowerLabelAtEachStart(Answer.NO);
        ventilation.setOpenAreaToAtmosphere(Area.of(300, "in2"));
        judge(BlowerLabelByLaw.check(), record).doesNotApply();
    }
}
