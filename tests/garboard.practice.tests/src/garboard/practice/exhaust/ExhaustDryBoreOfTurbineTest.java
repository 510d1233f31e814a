// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Aspiration;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustDryBoreOfTurbineTest {

    private static CommissioningRecord dry(Aspiration aspiration, String bore, String port) {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setAspiration(aspiration);
        exhaust(record).setTurbineOutletPortBore(Length.valueOf(port));
        add(record, ExhaustSection.DRY, bore, "0.3 m");
        return record;
    }

    // common practice: never smaller than the port
    @ParameterizedTest
    @CsvSource({ "TURBOCHARGED, 63.5 mm, 2 1/2 in, MEETS", "TURBOCHARGED_CHARGE_AIR_COOLED, 60 mm, 63.5 mm, FALLS_SHORT",
            "NATURALLY_ASPIRATED, 50 mm, 63.5 mm, DOES_NOT_APPLY" })
    void isAtLeastAsWideAsTheTurbinesOutlet(Aspiration aspiration, String bore, String port, Standing expected) {
        judge(ExhaustDryBoreOfTurbine.check(), dry(aspiration, bore, port)).is(expected);
    }

    @Test
    void theWiderPartMeets() {
        judge(ExhaustDryBoreOfTurbine.check(), dry(Aspiration.TURBOCHARGED, "50 mm", "63.5 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheBores() {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setAspiration(Aspiration.TURBOCHARGED);
        add(record, ExhaustSection.DRY);
        judge(ExhaustDryBoreOfTurbine.check(), record).cannotTell("exhaust.sections[run-1].bore", "exhaust.turbineOutletPortBore");
    }
}
