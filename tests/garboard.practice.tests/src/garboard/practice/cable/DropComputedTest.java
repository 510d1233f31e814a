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
import garboard.model.StrandClass;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class DropComputedTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    private CableRun circuit(CableFunction function, String system, String current, String lengthOfRun, String size) {
        CableRun run = Wiring.add(record, function);
        run.setSystemVoltage(Voltage.valueOf(system));
        run.setCurrent(Current.valueOf(current));
        run.setLength(Length.valueOf(lengthOfRun));
        run.setConductorSize(size);
        run.setCritical(Answer.YES);
        run.setStrandClass(StrandClass.CLASS_5PLAIN);
        return run;
    }

    // ABYC E-11 (quoted), a published example: 10 A over 21 ft out and back at 12 V and 3 % takes 12 AWG, 14 AWG is too thin.
    // 24 V, 40 A, 12 m, 3 %: CM = 10.75 I L / E gives 11.9 mm2, so 10 mm2 is too thin and 16 mm2 does
    @ParameterizedTest
    @CsvSource({ "12 V, 10 A, 10.5 ft, 12 AWG, MEETS", "12 V, 10 A, 10.5 ft, 14 AWG, FALLS_SHORT", "12 V, 10 A, 126 in, 12 AWG, MEETS",
        "24 V, 40 A, 6 m, 16 mm2, MEETS", "24 V, 40 A, 6 m, 10 mm2, FALLS_SHORT" })
    void threePerCentWhereItCounts(String system, String current, String lengthOfRun, String size, Standing standing) {
        circuit(CableFunction.OTHER_DC, system, current, lengthOfRun, size);
        judge(DropComputed.check(), record).is(standing);
    }

    // ABYC E-11 (quoted): 3 % is 0.36 V at 12 V and 0.72 V at 24 V, 10 % 1.2 V and 2.4 V; the set's controls and pump always count
    @ParameterizedTest
    @CsvSource({ "OTHER_DC, 12 V, YES, 0.36", "OTHER_DC, 24 V, YES, 0.72", "OTHER_DC, 12 V, NO, 1.2", "CHARGING, 24 V, NO, 2.4",
        "CONTROL, 12 V, NO, 0.36",
        "FUEL_PUMP, 24 V, UNANSWERED, 0.72" })
    void limitByWhatItFeeds(CableFunction function, String system, Answer critical, double limitV) {
        circuit(function, system, "5 A", "2 m", "10 AWG").setCritical(critical);
        judge(DropComputed.check(), record).meets().limit(limitV, "V", 1e-9);
    }

    @Test
    void theConstantOfE11StandsForItsTemperature() {
        circuit(CableFunction.OTHER_DC, "12 V", "10 A", "10.5 ft", "12 AWG");
        judge(DropComputed.check(), record).measured(0.346, "V", 0.0005); // ABYC E-11 (quoted): 10.75 x 10 A x 21 ft / 6530 CM = 0.346 V
    }

    @Test
    void hotCopperTakesMore() {
        CableRun run = circuit(CableFunction.CHARGING, "12 V", "30 A", "5 m", "10 AWG");
        run.setConductorTemperature(Temperature.of(50, "degC"));
        judge(DropComputed.check(), record).fallsShort().measured(1.10, "V", 0.005); // annealed copper, NBS Circular 31: 30 A, 10 m of 10 AWG at 50 degC
    }

    @Test
    void exactlyAtTheLimit() {
        CableRun run = circuit(CableFunction.OTHER_DC, "12 V", "10 A", "5 m", "2.5 mm2");
        run.setConductorTemperature(Temperature.of(20, "degC"));
        run.setCritical(Answer.NO);
        run.setLength(Length.of(7518.796992481203, "mm")); // IEC 60228 class 5: 7.98 ohm/km; 10 A over 15.0376 m take 1.2 V
        judge(DropComputed.check(), record).meets().measured(1.2, "V", 1e-9);
    }

    @Test
    void carriesTheAccuracyOfTheTape() {
        CableRun run = circuit(CableFunction.OTHER_DC, "12 V", "10 A", "10.9 ft ±0.5 ft", "12 AWG"); // 0.359 V +- 5 %
        judge(DropComputed.check(), record).is(Standing.BORDERLINE);
        run.setLength(Length.valueOf("10 ft ±0.1 ft"));
        judge(DropComputed.check(), record).meets();
    }

    @Test
    void remedyIsTheNextSizeOfItsSeries() {
        CableRun run = circuit(CableFunction.OTHER_DC, "24 V", "40 A", "6 m", "10 mm2");
        judge(DropComputed.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("16 mm2"); // IEC 60228 class 5: 1.21 ohm/km, 0.58 V over 12 m at 20 degC
    }

    @Test
    void remedyAllowsForTheAccuracy() {
        CableRun run = circuit(CableFunction.OTHER_DC, "24 V", "40 A", "6 m ±2 m", "10 mm2");
        judge(DropComputed.check(), record).borderline().afterRemedy().meets();
        // a third more than 0.58 V over 16 mm2 is more than 3 % of 24 V, 0.72 V: IEC 60228 class 5, 25 mm2, 0.780 ohm/km
        assertThat(run.getConductorSize()).isEqualTo("25 mm2");
    }

    @Test
    void remedyForAGauge() {
        CableRun run = circuit(CableFunction.FUEL_PUMP, "12 V", "10 A", "10.5 ft", "14 AWG");
        judge(DropComputed.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("12 AWG"); // ABYC E-11 (quoted), the published example
    }

    @Test
    void remedyComputesNothingWhenNoCableIsLargeEnough() {
        circuit(CableFunction.OTHER_DC, "12 V", "300 A", "100 m", "10 AWG");
        assertThat(judge(DropComputed.check(), record).fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void cannotTellWithoutInputs() {
        CableRun run = Wiring.add(record, CableFunction.OTHER_DC);
        judge(DropComputed.check(), record).cannotTell("startingBattery.cables[0].conductorSize", "startingBattery.cables[0].systemVoltage",
            "startingBattery.cables[0].length", "startingBattery.cables[0].current");
        run.setConductorSize("10 mm2");
        run.setSystemVoltage(Voltage.of(12, "V"));
        run.setLength(Length.of(3, "m"));
        run.setCurrent(Current.of(5, "A"));
        judge(DropComputed.check(), record).cannotTell("startingBattery.cables[0].critical", "startingBattery.cables[0].strandClass");
        run.setCritical(Answer.NO);
        judge(DropComputed.check(), record).cannotTell("startingBattery.cables[0].strandClass");
    }

    @Test
    void doesNotApplyToCrankingCables() {
        circuit(CableFunction.CRANKING_POSITIVE, "12 V", "300 A", "3 m", "70 mm2");
        judge(DropComputed.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToASizeThatCannotBeRead() {
        circuit(CableFunction.OTHER_DC, "12 V", "3 A", "3 m", "16");
        judge(DropComputed.check(), record).doesNotApply();
    }

    @Test
    void doesNotLookAtTheOutputCable() {
        CommissioningRecord whole = Installation.empty();
        assertThat(Judged.all(DropComputed.check(), whole)).isEmpty();
    }
}
