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

class SupplyFromOutsideByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        ventilation.setNetVolume(Volume.of(20, "ft3"));
        ventilation.setOpenAreaToAtmosphere(Area.of(0));
    }

    // 33 CFR 183.620(b)
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setSupplyFromOutside(Answer.YES);
        judge(SupplyFromOutsideByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setSupplyFromOutside(Answer.NO);
        judge(SupplyFromOutsideByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SupplyFromOutsideByLaw.check(), record).cannotTell("ventilation.supplyFromOutside");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        ventilation.setSupplyFromOutside(Answer.NOT_APPLICABLE);
        judge(SupplyFromOutsideByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyToDiesel() {
        ventilation.setSupplyFromOutside(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(SupplyFromOutsideByLaw.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyInTheOpen() {
        ventilation.setSupplyFromOutside(Answer.NO);
        ventilation.setOpenAreaToAtmosphere(Area.of(300, "in2"));
        judge(SupplyFromOutsideByLaw.check(), record).doesNotApply();
    }
}
