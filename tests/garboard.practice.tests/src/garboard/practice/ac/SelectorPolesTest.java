// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PolesSwitched;
import garboard.practice.testing.Installation;

class SelectorPolesTest {

    private final CommissioningRecord record = Installation.empty();
    private final AcOutput output = record.getAcOutput();

    @ParameterizedTest
    @CsvSource({ "AT_GENERATOR, ALL_LIVE_AND_NEUTRAL, MEETS", "AT_GENERATOR, LIVE_ONLY, FALLS_SHORT",
        "SWITCHED_WITH_SOURCE, LIVE_ONLY, FALLS_SHORT" }) // common practice; ISO 13297 13.2.1 as quoted: double pole
    void switchesTheNeutral(NeutralBond bond, PolesSwitched poles, Standing standing) {
        output.setNeutralBond(bond);
        output.getTransfer().setPoles(poles);
        judge(SelectorPoles.check(), record).is(standing);
    }

    @Test
    void remedySwitchesTheNeutral() {
        output.setNeutralBond(NeutralBond.AT_GENERATOR);
        output.getTransfer().setPoles(PolesSwitched.LIVE_ONLY);
        judge(SelectorPoles.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutBondOrPoles() {
        judge(SelectorPoles.check(), record).cannotTell("acOutput.neutralBond", "acOutput.transfer.poles");
    }

    @ParameterizedTest
    @CsvSource({ "AT_SWITCHBOARD", "NONE", "SEVERAL" })
    void doesNotApplyWithoutABondOfTheSet(NeutralBond bond) {
        output.setNeutralBond(bond);
        judge(SelectorPoles.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutAShoreInlet() {
        output.setNeutralBond(NeutralBond.AT_GENERATOR);
        output.setShoreInletResidualDevice(Answer.NOT_APPLICABLE);
        judge(SelectorPoles.check(), record).doesNotApply();
    }
}
