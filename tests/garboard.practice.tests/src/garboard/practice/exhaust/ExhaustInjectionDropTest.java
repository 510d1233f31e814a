// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.quantity.Length;

class ExhaustInjectionDropTest {

    private static CommissioningRecord drop(String drop) {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getRiser().setInjectionDropToMuffler(Length.valueOf(drop));
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook: 12 in (305 mm)
    @ParameterizedTest
    @CsvSource({ "305 mm, MEETS", "12 in, MEETS", "304 mm, FALLS_SHORT", "9 in, FALLS_SHORT", "310 mm ±10 mm, BORDERLINE" })
    void asksForTwelveInches(String drop, Standing expected) {
        judge(ExhaustInjectionDrop.check(), drop(drop)).is(expected).limit(12, "in", 0);
    }

    @Test
    void theMakersDropTakesThePlaceOfTheHandbooks() {
        CommissioningRecord record = drop("230 mm");
        record.getGeneratorSet().getMakerLimits().setMinimumInjectionDrop(Length.valueOf("8 in"));
        judge(ExhaustInjectionDrop.check(), record).meets().limitFromMaker();
    }

    @Test
    void theLoweredMufflerMeets() {
        judge(ExhaustInjectionDrop.check(), drop("100 mm")).fallsShort().afterRemedy().meets().measured(305, "mm", 0);
    }

    @Test
    void doesNotApplyWithoutAMuffler() {
        judge(ExhaustInjectionDrop.check(), muffler(MufflerKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheDrop() {
        judge(ExhaustInjectionDrop.check(), liftMuffler()).cannotTell("exhaust.riser.injectionDropToMuffler");
    }
}
