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
import garboard.model.InsulationRating;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

class AmpacityFrom50VByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final CableRun output = record.getAcOutput().getOutputCable();

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    private void cable(String size, InsulationRating insulation, Answer engineSpace, int together, String current) {
        output.setConductorSize(size);
        output.setInsulation(insulation);
        output.setInEngineSpace(engineSpace);
        output.setConductorsInBundle(together);
        output.setCurrent(Current.valueOf(current));
    }

    // 33 CFR 183.425 Table 5 with note 1 (engine space) and note 2 (quoted): 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25 and more 0.40
    @ParameterizedTest
    @CsvSource({ "10 AWG, C105, YES, 3, 35.7 A, 35.7, MEETS", "10 AWG, C105, YES, 3, 35.8 A, 35.7, FALLS_SHORT",
        "2 AWG, C105, YES, 3, 124.9 A, 124.95, MEETS", "6 AWG, C105, YES, 4, 61.2 A, 61.2, MEETS", "6 AWG, C105, YES, 7, 52 A, 51.0, FALLS_SHORT",
        "2/0 AWG, C90, YES, 3, 163.5 A, 163.59, MEETS", "12 AWG, C105, NO, 25, 18 A, 18.0, MEETS",
        "12 AWG, C105, NO, 25, 18100 mA, 18.0, FALLS_SHORT",
        "6 AWG, C105, YES, 3, 71.4 A, 71.4, MEETS", "10 AWG, C105, NO, 2, 60 A, 60, MEETS" })
    void keepsTable5InABundle(String size, InsulationRating insulation, Answer engineSpace, int together, String current, double allowedA,
        Standing standing) {
        cable(size, insulation, engineSpace, together, current);
        judge(AmpacityFrom50VByLaw.check(), record).is(standing).limit(allowedA, "A", 1e-9);
    }

    // 33 CFR 183.425: the table was read, note 1 at 105 degC and note 2 were seen quoted, the other factors of note 1 are from memory
    @ParameterizedTest
    @CsvSource({ "C105, NO, 2, 33 CFR 183.425 Table 5", "C105, YES, 2, 33 CFR 183.425 Table 5 with note 1 as quoted",
        "C90, YES, 3, '33 CFR 183.425 Table 5 with note 1 from memory, note 2 as quoted'",
        "C60, NO, 3, '33 CFR 183.425 Table 5, note 2 as quoted'" })
    void tellsWhichFiguresWereNotRead(InsulationRating insulation, Answer engineSpace, int together, String origin) {
        cable("10 AWG", insulation, engineSpace, together, "1 A");
        assertThat(judge(AmpacityFrom50VByLaw.check(), record).meets().verdict().limit().orElseThrow().origin()).isEqualTo(origin);
    }

    @Test
    void remedyIsTheNextSize() {
        cable("10 AWG", InsulationRating.C105, Answer.YES, 3, "45 A");
        judge(AmpacityFrom50VByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(output.getConductorSize()).isEqualTo("8 AWG"); // 33 CFR 183.425 Table 5: 80 A x 0.85 x 0.70 = 47.6 A
    }

    @Test
    void looksAtBranchesToo() {
        record.getAcOutput().setOutputCable(null);
        Wiring.add(record, CableFunction.AC_BRANCH);
        judge(AmpacityFrom50VByLaw.check(), record).cannotTell("startingBattery.cables[0].conductorSize", "startingBattery.cables[0].current",
            "startingBattery.cables[0].insulation", "startingBattery.cables[0].inEngineSpace", "startingBattery.cables[0].conductorsInBundle");
    }

    @Test
    void doesNotLookAtBatteryCables() {
        Wiring.add(record, CableFunction.CHARGING);
        assertThat(Judged.all(AmpacityFrom50VByLaw.check(), record)).hasSize(1);
    }

    @Test
    void beginsAtFiftyVolts() {
        output.setSystemVoltage(Voltage.of(49.9, "V"));
        assertThat(Judged.all(AmpacityFrom50VByLaw.check(), record)).isEmpty();
        output.setSystemVoltage(Voltage.of(50, "V")); // 33 CFR 183.435: 50 volts or more
        assertThat(Judged.all(AmpacityFrom50VByLaw.check(), record)).hasSize(1);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(AmpacityFrom50VByLaw.check(), record).cannotTell("acOutput.outputCable.conductorSize", "acOutput.outputCable.current",
            "acOutput.outputCable.insulation", "acOutput.outputCable.inEngineSpace", "acOutput.outputCable.conductorsInBundle");
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        cable("10 AWG", InsulationRating.C105, Answer.YES, 3, "60 A");
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(AmpacityFrom50VByLaw.check(), record).doesNotApply();
    }
}
