// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;

class ExhaustLiftMufflerOnGasolineTest {

    // Gerr, Boat Mechanical Systems Handbook, advises against lift mufflers on gasoline
    @ParameterizedTest
    @CsvSource({ "GASOLINE, LIFT_MUFFLER, FALLS_SHORT", "GASOLINE, COMBINED_LIFT_AND_SEPARATOR, FALLS_SHORT", "GASOLINE, STANDPIPE, MEETS",
            "GASOLINE, GAS_WATER_SEPARATOR, MEETS", "DIESEL, LIFT_MUFFLER, DOES_NOT_APPLY" })
    void gasolineDoesWithoutOne(FuelKind fuel, MufflerKind kind, Standing expected) {
        CommissioningRecord record = muffler(kind);
        record.getGeneratorSet().setFuel(fuel);
        judge(ExhaustLiftMufflerOnGasoline.check(), record).is(expected);
    }

    @Test
    void cannotTellWithoutFuelAndMuffler() {
        judge(ExhaustLiftMufflerOnGasoline.check(), Installation.empty()).cannotTell("generatorSet.fuel", "exhaust.muffler.kind");
    }
}
