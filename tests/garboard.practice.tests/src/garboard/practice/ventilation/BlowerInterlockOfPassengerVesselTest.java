// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.Ventilation;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class BlowerInterlockOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    @BeforeEach
    void applies() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
    }

    // 46 CFR 182.460(e), from memory
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setBlowerInterlocked(Answer.YES);
        judge(BlowerInterlockOfPassengerVessel.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setBlowerInterlocked(Answer.NO);
        judge(BlowerInterlockOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(BlowerInterlockOfPassengerVessel.check(), record).cannotTell("ventilation.blowerInterlocked");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        ventilation.setBlowerInterlocked(Answer.NOT_APPLICABLE);
        judge(BlowerInterlockOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        ventilation.setBlowerInterlocked(Answer.NO);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(BlowerInterlockOfPassengerVessel.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToDiesel() {
        ventilation.setBlowerInterlocked(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowerInterlockOfPassengerVessel.check(), record).doesNotApply();
    }
}
