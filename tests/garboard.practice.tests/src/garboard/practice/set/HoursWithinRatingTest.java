// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.DutyRating;
import garboard.practice.testing.Installation;
import garboard.quantity.TimeSpan;

class HoursWithinRatingTest {

    private final CommissioningRecord record = Installation.empty();

    // ISO 8528-1:2018 as quoted: LTP 500 h, ESP 200 h a year; 900 h on an LTP set and 300 h on an ESP set are too many
    @ParameterizedTest
    @CsvSource({ "LIMITED_TIME, 900 h, FALLS_SHORT", "LIMITED_TIME, 500 h, MEETS", "LIMITED_TIME, 501 h, FALLS_SHORT", "STANDBY, 300 h, FALLS_SHORT",
        "STANDBY, 200 h, MEETS", "STANDBY, 12000 min, MEETS" })
    void hoursOfTheYear(DutyRating rating, String hours, Standing standing) {
        record.getGeneratorSet().setDutyRating(rating);
        record.getGeneratorSet().setAnnualHours(TimeSpan.valueOf(hours));
        judge(HoursWithinRating.check(), record).is(standing);
    }

    @Test
    void thePlanOfUpkeepKnowsTheHoursToo() {
        record.getGeneratorSet().setDutyRating(DutyRating.STANDBY);
        record.getUpkeep().setAnnualHours(TimeSpan.of(300, "h"));
        judge(HoursWithinRating.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutRatingOrHours() {
        judge(HoursWithinRating.check(), record).cannotTell("generatorSet.dutyRating");
        record.getGeneratorSet().setDutyRating(DutyRating.STANDBY);
        judge(HoursWithinRating.check(), record).cannotTell("generatorSet.annualHours");
    }

    @ParameterizedTest
    @CsvSource({ "CONTINUOUS", "PRIME" })
    void doesNotApplyToUnlimitedRatings(DutyRating rating) {
        record.getGeneratorSet().setDutyRating(rating);
        judge(HoursWithinRating.check(), record).doesNotApply();
    }
}
