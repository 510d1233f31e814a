// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Temperature;

class ExhaustHotSurfaceByLawTest {

    private static CommissioningRecord surface(Answer lagged, String temperature) {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        exhaust(record).setDryPartsLagged(lagged);
        exhaust(record).setDryPartSurfaceTemperature(Temperature.valueOf(temperature));
        return record;
    }

    // 46 CFR 177.970: insulated above 65.5 degC (150 degF)
    @ParameterizedTest
    @CsvSource({ "NO, 60 degC, MEETS", "NO, 70 degC, FALLS_SHORT", "YES, 70 degC, MEETS", "NO, 65.5 degC, MEETS", "NO, 150 degF, MEETS",
            "NO, 151 degF, FALLS_SHORT", "NOT_APPLICABLE, 70 degC, FALLS_SHORT", "NOT_APPLICABLE, 60 degC, MEETS" })
    void hotPartsAreInsulated(Answer lagged, String temperature, Standing expected) {
        judge(ExhaustHotSurfaceByLaw.check(), surface(lagged, temperature)).is(expected);
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = surface(Answer.NO, "70 degC");
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ExhaustHotSurfaceByLaw.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutLaggingOrTemperature() {
        CommissioningRecord record = surface(Answer.UNANSWERED, "70 degC");
        judge(ExhaustHotSurfaceByLaw.check(), record).cannotTell("exhaust.dryPartsLagged");
        CommissioningRecord bare = surface(Answer.NO, "70 degC");
        exhaust(bare).setDryPartSurfaceTemperature(null);
        judge(ExhaustHotSurfaceByLaw.check(), bare).cannotTell("exhaust.dryPartSurfaceTemperature");
    }
}
