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

class FilterStandsFireTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSeparator fuelSeparator = record.getFuelSupply().getSeparator();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
    }

    // ISO 16147:2020, 5.1.4 (extract)
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSeparator.setFireTested(Answer.YES);
        judge(FilterStandsFire.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSeparator.setFireTested(Answer.NO);
        judge(FilterStandsFire.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(FilterStandsFire.check(), record).cannotTell("fuelSupply.separator.fireTested");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSeparator.setFireTested(Answer.NOT_APPLICABLE);
        judge(FilterStandsFire.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWhereTheLawDoes() {
        fuelSeparator.setFireTested(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        judge(FilterStandsFire.check(), record).doesNotApply();
    }
}
