// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;

class LeastGaugeByIsoTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.CONTROL);

    // ISO 13297 (quoted): 1 mm2 alone, 0.75 mm2 in a sheath
    @ParameterizedTest
    @CsvSource({ "1 mm2, UNANSWERED, MEETS", "0.75 mm2, YES, MEETS", "0.75 mm2, NO, FALLS_SHORT", "0.5 mm2, YES, FALLS_SHORT",
        "18 AWG, YES, MEETS", "18 AWG, NO, FALLS_SHORT" })
    void thickEnough(String size, Answer sheathed, Standing standing) {
        run.setConductorSize(size);
        run.setSheathedToProtection(sheathed);
        judge(LeastGaugeByIso.check(), record).is(standing);
    }

    @Test
    void remedyIsAThickerOne() {
        run.setConductorSize("0.5 mm2");
        run.setSheathedToProtection(Answer.YES);
        judge(LeastGaugeByIso.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheSheath() {
        run.setConductorSize("0.75 mm2");
        judge(LeastGaugeByIso.check(), record).cannotTell("startingBattery.cables[0].sheathedToProtection");
    }

    @Test
    void doesNotApplyToTheOutputCableOfThreePhases() {
        Iso13297Scope.isKept(LeastGaugeByIso.check());
    }

    @Test
    void doesNotApplyToASizeThatCannotBeRead() {
        run.setConductorSize("thin");
        judge(LeastGaugeByIso.check(), record).doesNotApply();
    }
}
