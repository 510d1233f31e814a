// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.quantity.Length;

class LeastGaugeByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.CONTROL);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.425(d), (e): 16 AWG alone, 18 AWG in a sheath
    @ParameterizedTest
    @CsvSource({ "16 AWG, UNANSWERED, MEETS", "18 AWG, NO, FALLS_SHORT", "18 AWG, YES, MEETS", "20 AWG, YES, FALLS_SHORT", "1.5 mm2, NO, MEETS",
        "1 mm2, NO, FALLS_SHORT",
        "1 mm2, YES, MEETS" })
    void thickEnough(String size, Answer sheathed, Standing standing) {
        run.setConductorSize(size);
        run.setSheathedToProtection(sheathed);
        judge(LeastGaugeByLaw.check(), record).is(standing);
    }

    @Test
    void remedyIsAThickerOne() {
        run.setConductorSize("1 mm2");
        run.setSheathedToProtection(Answer.NO);
        judge(LeastGaugeByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("1.5 mm2");
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(LeastGaugeByLaw.check(), record).cannotTell("startingBattery.cables[0].conductorSize");
        run.setConductorSize("18 AWG");
        judge(LeastGaugeByLaw.check(), record).cannotTell("startingBattery.cables[0].sheathedToProtection");
    }

    @Test
    void doesNotApplyToPigtailsOrWithoutGasoline() {
        run.setConductorSize("20 AWG");
        run.setLength(Length.of(150, "mm")); // 33 CFR 183.425(g): less than 7 in
        judge(LeastGaugeByLaw.check(), record).doesNotApply();
        run.setLength(Length.of(1, "m"));
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(LeastGaugeByLaw.check(), record).doesNotApply();
    }
}
