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
import garboard.practice.testing.Judged;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Voltage;

class AmpacityBelow50VByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    private CableRun circuit(String size, InsulationRating insulation, Answer engineSpace, String current) {
        CableRun run = Wiring.add(record, CableFunction.OTHER_DC);
        run.setConductorSize(size);
        run.setInsulation(insulation);
        run.setInEngineSpace(engineSpace);
        run.setCurrent(Current.valueOf(current));
        return run;
    }

    // 33 CFR 183.425 Table 5; engine space by note 1: 0.58 at 60 degC (from memory), 0.75 at 75 degC, 0.85 at 105 degC (quoted)
    @ParameterizedTest
    @CsvSource({ "10 AWG, C105, NO, 60 A, 60, MEETS", "10 AWG, C105, NO, 60.1 A, 60, FALLS_SHORT", "10 AWG, C105, YES, 51 A, 51.0, MEETS",
        "10 AWG, C105, YES, 60 A, 51.0, FALLS_SHORT", "8 AWG, C75, YES, 48.7 A, 48.75, MEETS", "8 AWG, C75, YES, 48800 mA, 48.75, FALLS_SHORT",
        "4 AWG, C60, YES, 60.9 A, 60.9, MEETS", "2/0 AWG, C105, YES, 281 A, 280.5, FALLS_SHORT", "4 AWG, C105, YES, 136 A, 136.0, MEETS" })
    void keepsTable5(String size, InsulationRating insulation, Answer engineSpace, String current, double allowedA, Standing standing) {
        circuit(size, insulation, engineSpace, current);
        judge(AmpacityBelow50VByLaw.check(), record).is(standing).limit(allowedA, "A", 1e-9);
    }

    // 33 CFR 183.425 Table 5, column of 105 degC, times 0.85 in an engine space
    @ParameterizedTest
    @CsvSource({ "18 AWG, 17.0", "16 AWG, 21.25", "14 AWG, 29.75", "12 AWG, 38.25", "10 AWG, 51.0", "8 AWG, 68.0", "6 AWG, 102.0", "4 AWG, 136.0",
        "3 AWG, 153.0", "2 AWG, 178.5", "1 AWG, 208.25", "1/0 AWG, 242.25", "2/0 AWG, 280.5", "3/0 AWG, 327.25", "4/0 AWG, 378.25" })
    void engineSpaceAt105(String size, double allowedA) {
        circuit(size, InsulationRating.C105, Answer.YES, "1 A");
        judge(AmpacityBelow50VByLaw.check(), record).meets().limit(allowedA, "A", 1e-9);
    }

    // derived: a metric size counts as the largest gauge that it contains, 70 degC as the 60 degC column of 33 CFR 183.425 Table 5
    @ParameterizedTest
    @CsvSource({ "6 mm2, C105, 60", "70 mm2, C105, 330", "6 mm2, C70, 40", "120 mm2, C105, 445" })
    void metricSizesAndSeventyDegrees(String size, InsulationRating insulation, double allowedA) {
        circuit(size, insulation, Answer.NO, "1 A");
        judge(AmpacityBelow50VByLaw.check(), record).meets().limit(allowedA, "A", 1e-9);
    }

    @Test
    void fallsShortBelowTheTable() {
        circuit("0.5 mm2", InsulationRating.C105, Answer.NO, "1 A"); // 33 CFR 183.425 Table 5 begins at 18 AWG, 0.823 mm2
        judge(AmpacityBelow50VByLaw.check(), record).fallsShort();
    }

    @Test
    void remedyIsTheNextSize() {
        CableRun run = circuit("10 AWG", InsulationRating.C105, Answer.YES, "60 A");
        judge(AmpacityBelow50VByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("8 AWG"); // 33 CFR 183.425 Table 5: 80 A x 0.85 = 68 A
    }

    @Test
    void remedyForAMetricSize() {
        CableRun run = circuit("6 mm2", InsulationRating.C105, Answer.NO, "70 A");
        judge(AmpacityBelow50VByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("10 mm2"); // contains 8 AWG: 80 A in 33 CFR 183.425 Table 5
    }

    @Test
    void remedyComputesNothingWhenNoCableIsLargeEnough() {
        circuit("4/0 AWG", InsulationRating.C105, Answer.YES, "400 A");
        assertThat(judge(AmpacityBelow50VByLaw.check(), record).fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void cannotTellWithoutInputs() {
        Wiring.add(record, CableFunction.NOT_ENTERED);
        judge(AmpacityBelow50VByLaw.check(), record).cannotTell("startingBattery.cables[0].function", "startingBattery.cables[0].conductorSize",
            "startingBattery.cables[0].current", "startingBattery.cables[0].insulation", "startingBattery.cables[0].inEngineSpace");
    }

    @Test
    void doesNotApplyToCrankingConductors() {
        CableRun run = circuit("10 AWG", InsulationRating.C105, Answer.YES, "300 A");
        run.setFunction(CableFunction.CRANKING_POSITIVE); // 33 CFR 183.425(g)
        judge(AmpacityBelow50VByLaw.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToPigtails() {
        CableRun run = circuit("18 AWG", InsulationRating.C60, Answer.YES, "30 A");
        run.setLength(Length.of(6.9, "in")); // 33 CFR 183.425(g): less than 7 in
        judge(AmpacityBelow50VByLaw.check(), record).doesNotApply();
        run.setLength(Length.of(7, "in"));
        judge(AmpacityBelow50VByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        circuit("10 AWG", InsulationRating.C105, Answer.YES, "300 A");
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(AmpacityBelow50VByLaw.check(), record).doesNotApply();
    }

    @Test
    void leavesFiftyVoltsToTheOtherCheck() {
        circuit("10 AWG", InsulationRating.C105, Answer.YES, "300 A").setSystemVoltage(Voltage.of(50, "V")); // 33 CFR 183.435: 50 volts or more
        assertThat(Judged.all(AmpacityBelow50VByLaw.check(), record)).isEmpty();
        record.getStartingBattery().getCables().getFirst().setSystemVoltage(Voltage.of(49.9, "V"));
        judge(AmpacityBelow50VByLaw.check(), record).fallsShort();
    }
}
