// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;

class CommonNegativeInAnyBoatTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    // common practice: a main engine's cable of 70 mm2 beside 35 mm2 of the set asks for 70 mm2; the record knows those of the set
    @ParameterizedTest
    @CsvSource({ "70 mm2, MEETS", "95 mm2, MEETS", "50 mm2, FALLS_SHORT", "3/0 AWG, MEETS", "none, FALLS_SHORT" })
    void asLargeAsTheLargestCrankingCable(String link, Standing standing) {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("35 mm2");
        Wiring.add(record, CableFunction.CRANKING_NEGATIVE).setConductorSize("70 mm2");
        record.getMounting().setCommonNegativeLink(link);
        judge(CommonNegativeInAnyBoat.check(), record).is(standing);
    }

    @Test
    void remedyIsALinkOfThatSize() {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("70 mm2");
        record.getMounting().setCommonNegativeLink("25 mm2");
        judge(CommonNegativeInAnyBoat.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(CommonNegativeInAnyBoat.check(), record).cannotTell("startingBattery.cables.conductorSize");
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("70 mm2");
        judge(CommonNegativeInAnyBoat.check(), record).cannotTell("mounting.commonNegativeLink");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaksOrToAnInsulatedReturn() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getVessel().setGasolineEngines(2);
        judge(CommonNegativeInAnyBoat.check(), record).doesNotApply();
        record.getVessel().setGasolineEngines(1);
        record.getMounting().setDcNegativeIsolated(Answer.YES);
        judge(CommonNegativeInAnyBoat.check(), record).doesNotApply();
    }
}
