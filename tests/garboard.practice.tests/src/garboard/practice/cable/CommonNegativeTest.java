// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;

class CommonNegativeTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @BeforeEach
    void twoGasolineEngines() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getVessel().setGasolineEngines(2);
    }

    // 33 CFR 183.415: able to carry any one starting current, so as large as the largest cranking cable: 70 mm2 beside 35 mm2
    @ParameterizedTest
    @CsvSource({ "70 mm2, MEETS", "95 mm2, MEETS", "50 mm2, FALLS_SHORT", "3/0 AWG, MEETS", "2/0 AWG, FALLS_SHORT", "none, FALLS_SHORT" })
    void asLargeAsTheLargestCrankingCable(String link, Standing standing) {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("35 mm2");
        Wiring.add(record, CableFunction.CRANKING_NEGATIVE).setConductorSize("70 mm2");
        record.getMounting().setCommonNegativeLink(link);
        judge(CommonNegative.check(), record).is(standing);
        record.getMounting().setCommonNegativeLink(null);
        Wiring.add(record, CableFunction.COMMON_NEGATIVE_LINK).setConductorSize(link);
        judge(CommonNegative.check(), record).is(standing);
    }

    @Test
    void remedyIsALinkOfThatSize() {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("70 mm2");
        record.getMounting().setCommonNegativeLink("25 mm2");
        judge(CommonNegative.check(), record).fallsShort().afterRemedy().meets();
        Wiring.add(record, CableFunction.COMMON_NEGATIVE_LINK).setConductorSize("25 mm2");
        judge(CommonNegative.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(CommonNegative.check(), record).cannotTell("startingBattery.cables.conductorSize");
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setConductorSize("70 mm2");
        judge(CommonNegative.check(), record).cannotTell("mounting.commonNegativeLink");
    }

    @Test
    void doesNotApplyToOneEngineOrNoGasoline() {
        record.getVessel().setGasolineEngines(1);
        judge(CommonNegative.check(), record).doesNotApply();
        record.getVessel().setGasolineEngines(null);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(CommonNegative.check(), record).doesNotApply();
    }
}
