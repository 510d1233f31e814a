// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.DutyRating;
import garboard.practice.testing.Installation;

class OverloadOfPrimeRatingTest {

    private final CommissioningRecord record = Installation.empty();

    // ISO 8528-1:2018 as quoted: 110 % for prime power only, where declared
    @ParameterizedTest
    @CsvSource({ "PRIME, MEETS", "CONTINUOUS, FALLS_SHORT", "LIMITED_TIME, FALLS_SHORT", "STANDBY, FALLS_SHORT" })
    void ofPrimePowerOnly(DutyRating rating, Standing standing) {
        record.getGeneratorSet().setOverloadDeclared(Answer.YES);
        record.getGeneratorSet().setDutyRating(rating);
        judge(OverloadOfPrimeRating.check(), record).is(standing);
    }

    @Test
    void remedyClaimsNone() {
        record.getGeneratorSet().setOverloadDeclared(Answer.YES);
        record.getGeneratorSet().setDutyRating(DutyRating.STANDBY);
        judge(OverloadOfPrimeRating.check(), record).fallsShort().afterRemedy().doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(OverloadOfPrimeRating.check(), record).cannotTell("generatorSet.overloadDeclared", "generatorSet.dutyRating");
    }

    @Test
    void doesNotApplyWithoutAClaim() {
        record.getGeneratorSet().setOverloadDeclared(Answer.NO);
        judge(OverloadOfPrimeRating.check(), record).doesNotApply();
    }
}
