// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;

class ExhaustHoseForGasolineTest {

    // ISO 13363:2016, scope: class A diesel, class B gasoline and very hot diesel
    @ParameterizedTest
    @CsvSource({ "GASOLINE, ISO_13363_CLASS_B, MEETS", "GASOLINE, SAE_J2006, MEETS", "GASOLINE, ISO_13363_CLASS_A, FALLS_SHORT",
            "GASOLINE, UNMARKED, FALLS_SHORT", "GASOLINE, METAL_PIPE, DOES_NOT_APPLY", "DIESEL, ISO_13363_CLASS_A, DOES_NOT_APPLY" })
    void classAIsForDiesel(FuelKind fuel, ExhaustHoseStandard standard, Standing expected) {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setFuel(fuel);
        add(record, ExhaustSection.INJECTION_TO_MUFFLER).setStandard(standard);
        judge(ExhaustHoseForGasoline.check(), record).is(expected);
    }

    @Test
    void cannotTellWithoutFuelAndMark() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.INJECTION_TO_MUFFLER);
        judge(ExhaustHoseForGasoline.check(), record).cannotTell("generatorSet.fuel", "exhaust.sections[run-1].standard");
    }
}
