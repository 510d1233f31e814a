// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loop;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.SiphonBreakKind;
import garboard.model.SiphonBreakPlace;

class SiphonAfterHeatExchangerTest {

    // common practice; on the suction side and behind the injection ABYC P-1 as quoted is broken, which is told there
    @ParameterizedTest
    @CsvSource({ "PUMP_SUCTION, DOES_NOT_APPLY", "AFTER_INJECTION, DOES_NOT_APPLY", "BETWEEN_PUMP_AND_HEAT_EXCHANGER, FALLS_SHORT",
            "BETWEEN_HEAT_EXCHANGER_AND_INJECTION, MEETS" })
    void wantsTheLegThatLeadsToTheInjection(SiphonBreakPlace place, Standing expected) {
        CommissioningRecord record = loop();
        siphonBreak(record).setPlace(place);
        judge(SiphonAfterHeatExchanger.check(), record).is(expected);
    }

    @Test
    void doesNotApplyWithoutAHeatExchanger() {
        CommissioningRecord record = loop();
        record.getGeneratorSet().setCooling(Cooling.DIRECT_RAW_WATER);
        judge(SiphonAfterHeatExchanger.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutALoop() {
        judge(SiphonAfterHeatExchanger.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutThePlace() {
        judge(SiphonAfterHeatExchanger.check(), loop()).cannotTell("rawWater.siphonBreak.place");
    }
}
