// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Ventilation;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class SealedOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    @BeforeEach
    void applies() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    // 46 CFR 177.405(c)
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setSealedFromAccommodation(Answer.YES);
        judge(SealedOfPassengerVessel.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setSealedFromAccommodation(Answer.NO);
        judge(SealedOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SealedOfPassengerVessel.check(), record).cannotTell("ventilation.sealedFromAccommodation");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        ventilation.setSealedFromAccommodation(Answer.NOT_APPLICABLE);
        judge(SealedOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        ventilation.setSealedFromAccommodation(Answer.NO);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(SealedOfPassengerVessel.check(), record).doesNotApply();
    }
}
