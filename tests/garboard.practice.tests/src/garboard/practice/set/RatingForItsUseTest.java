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
import garboard.quantity.TimeSpan;

class RatingForItsUseTest {

    private final CommissioningRecord record = Installation.empty();

    // ISO 8528-1:2018 as quoted; that a set aboard counts as prime power is common practice
    @ParameterizedTest
    @CsvSource({ "CONTINUOUS, UNANSWERED, MEETS", "PRIME, UNANSWERED, MEETS", "LIMITED_TIME, NO, FALLS_SHORT", "STANDBY, NO, FALLS_SHORT",
        "STANDBY, YES, MEETS" })
    void forDailyUse(DutyRating rating, Answer emergency, Standing standing) {
        record.getGeneratorSet().setDutyRating(rating);
        record.getStartingBattery().setEmergencySource(emergency);
        judge(RatingForItsUse.check(), record).is(standing);
    }

    @Test
    void stepsBackWhereTheHoursAreBeyondTheRating() {
        record.getGeneratorSet().setAnnualHours(TimeSpan.of(300, "h"));
        forDailyUse(DutyRating.STANDBY, Answer.NO, Standing.DOES_NOT_APPLY);
    }

    @Test
    void cannotTellWithoutRatingOrUse() {
        judge(RatingForItsUse.check(), record).cannotTell("generatorSet.dutyRating");
        record.getGeneratorSet().setDutyRating(DutyRating.STANDBY);
        judge(RatingForItsUse.check(), record).cannotTell("startingBattery.emergencySource");
    }
}
