// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSeparator;
import garboard.practice.testing.Installation;

class FilterStandsFireByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSeparator fuelSeparator = record.getFuelSupply().getSeparator();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.534
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSeparator.setFireTested(Answer.YES);
        judge(FilterStandsFireByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSeparator.setFireTested(Answer.NO);
        judge(FilterStandsFireByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(FilterStandsFireByLaw.check(), record).cannotTell("fuelSupply.separator.fireTested");
    }

    @Test
    void isNotAnsweredByMarkingItAsNotApplicable() {
        fuelSeparator.setFireTested(Answer.NOT_APPLICABLE);
        judge(FilterStandsFireByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelSeparator.setFireTested(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(FilterStandsFireByLaw.check(), record).doesNotApply();
    }
}
