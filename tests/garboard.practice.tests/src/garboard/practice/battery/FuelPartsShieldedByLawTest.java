// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;

class FuelPartsShieldedByLawTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void gasolineBoat() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.420(c): within 12 in and above the battery's top a dielectric shield
    @ParameterizedTest
    @CsvSource({ "YES, YES, MEETS", "YES, NO, FALLS_SHORT", "NO, NO, MEETS", "NO, UNANSWERED, MEETS", "NOT_APPLICABLE, NO, DOES_NOT_APPLY" })
    void shielded(Answer withinReach, Answer shield, Standing standing) {
        battery.setFuelPartsWithinReach(withinReach);
        battery.setDielectricShield(shield);
        judge(FuelPartsShieldedByLaw.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutAnswers() {
        judge(FuelPartsShieldedByLaw.check(), record).cannotTell("startingBattery.fuelPartsWithinReach");
        battery.setFuelPartsWithinReach(Answer.YES);
        judge(FuelPartsShieldedByLaw.check(), record).cannotTell("startingBattery.dielectricShield");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(FuelPartsShieldedByLaw.check(), record).doesNotApply();
    }
}
