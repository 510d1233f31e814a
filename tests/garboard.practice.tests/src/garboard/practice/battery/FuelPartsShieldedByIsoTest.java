// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;

class FuelPartsShieldedByIsoTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @ParameterizedTest
    @CsvSource({ "YES, YES, MEETS", "YES, NO, FALLS_SHORT", "NO, NO, MEETS" }) // ISO 10133 clause 5 (quoted): 300 mm
    void shielded(Answer withinReach, Answer shield, Standing standing) {
        battery.setFuelPartsWithinReach(withinReach);
        battery.setDielectricShield(shield);
        judge(FuelPartsShieldedByIso.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutAnswers() {
        battery.setFuelPartsWithinReach(Answer.YES);
        judge(FuelPartsShieldedByIso.check(), record).cannotTell("startingBattery.dielectricShield");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        battery.setFuelPartsWithinReach(Answer.NOT_APPLICABLE);
        judge(FuelPartsShieldedByIso.check(), record).doesNotApply();
    }
}
