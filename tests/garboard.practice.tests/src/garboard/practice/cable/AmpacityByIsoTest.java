// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

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

class AmpacityByIsoTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    private CableRun circuit(String size, InsulationRating insulation, Answer engineSpace, int together, String current) {
        CableRun run = Wiring.add(record, CableFunction.OTHER_DC);
        run.setConductorSize(size);
        run.setInsulation(insulation);
        run.setInEngineSpace(engineSpace);
        run.setConductorsInBundle(together);
        run.setCurrent(Current.valueOf(current));
        return run;
    }

    // ISO 10133 annex A (from memory): 16 mm2 at 105 degC 130 A, engine space 0.86; 6 mm2 at 70 degC 45 A, five together 0.7
    @ParameterizedTest
    @CsvSource({ "16 mm2, C105, YES, 1, 111.8 A, 111.8, MEETS", "16 mm2, C105, YES, 1, 112 A, 111.8, FALLS_SHORT",
        "6 mm2, C70, NO, 5, 31.5 A, 31.5, MEETS",
        "6 mm2, C70, NO, 5, 31600 mA, 31.5, FALLS_SHORT", "6 mm2, C80, NO, 3, 45 A, 45, MEETS", "16 mm2, C90, NO, 1, 100 A, 100, MEETS" })
    void keepsTheAnnex(String size, InsulationRating insulation, Answer engineSpace, int together, String current, double allowedA, Standing standing) {
        circuit(size, insulation, engineSpace, together, current);
        judge(AmpacityByIso.check(), record).is(standing).limit(allowedA, "A", 1e-9);
    }

    @Test
    void remedyIsTheNextSize() {
        CableRun run = circuit("16 mm2", InsulationRating.C105, Answer.YES, 1, "120 A");
        judge(AmpacityByIso.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("25 mm2"); // ISO 10133 annex A (from memory): 170 A x 0.86 = 146 A
    }

    @Test
    void remedyAllowsForTheAccuracy() {
        CableRun run = circuit("16 mm2", InsulationRating.C105, Answer.YES, 1, "145 A ±5 A");
        judge(AmpacityByIso.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("35 mm2"); // ISO 10133 annex A (from memory): 25 mm2 carry 146 A, less than 150 A
    }

    @Test
    void cannotTellWithoutInputs() {
        Wiring.add(record, CableFunction.OTHER_DC);
        judge(AmpacityByIso.check(), record).cannotTell("startingBattery.cables[0].conductorSize", "startingBattery.cables[0].insulation",
            "startingBattery.cables[0].inEngineSpace", "startingBattery.cables[0].conductorsInBundle", "startingBattery.cables[0].current");
    }

    @ParameterizedTest
    @CsvSource({ "10 AWG, C105, NO", "185 mm2, C105, NO", "16 mm2, C60, YES", "16 mm2, C200, YES", "16, C105, NO" })
    void doesNotApplyWhereTheAnnexIsSilent(String size, InsulationRating insulation, Answer engineSpace) {
        circuit(size, insulation, engineSpace, 1, "10 A");
        judge(AmpacityByIso.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToTheOutputCableOfThreePhases() {
        Iso13297Scope.isKept(AmpacityByIso.check());
    }

    @Test
    void leavesCrankingCablesOut() {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE);
        assertThat(Judged.all(AmpacityByIso.check(), record)).isEmpty();
    }
}
