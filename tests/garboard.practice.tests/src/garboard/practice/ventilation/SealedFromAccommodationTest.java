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

class SealedFromAccommodationTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
    }

    // ISO 11105:2020 (extract)
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setSealedFromAccommodation(Answer.YES);
        judge(SealedFromAccommodation.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setSealedFromAccommodation(Answer.NO);
        judge(SealedFromAccommodation.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SealedFromAccommodation.check(), record).cannotTell("ventilation.sealedFromAccommodation");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        ventilation.setSealedFromAccommodation(Answer.NOT_APPLICABLE);
        judge(SealedFromAccommodation.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToDiesel() {
        ventilation.setSealedFromAccommodation(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(SealedFromAccommodation.check(), record).doesNotApply();
    }
}
