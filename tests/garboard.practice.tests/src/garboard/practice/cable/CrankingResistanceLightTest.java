// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.StrandClass;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

class CrankingResistanceLightTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final GeneratorSet set = record.getGeneratorSet();

    private void circuit(String system, String size, StrandClass make, String lengthOfEach) {
        set.setSystemVoltage(Voltage.valueOf(system));
        Wiring.cranking(record, size, make, lengthOfEach);
    }

    // limit: SAE J541 (quoted), 0.20 V per 100 A at 12 V and 0.40 V at 24 V for light and medium duty.
    // resistance: IEC 60228 class 5 plain (quoted) 0.272, 0.386, 0.554 ohm/km for 70, 50, 35 mm2;
    // annealed copper (NBS Circular 31) 0.2557 ohm/km for 2/0 AWG.
    // 70 mm2, 6 m loop, 300 A: 0.490 V; 50 mm2, 4 m, 400 A: 0.618 V; 24 V, 35 mm2, 8 m, 250 A: 1.108 V; 2/0 AWG, 20 ft, 300 A: 0.468 V
    @ParameterizedTest
    @CsvSource({ "12 V, 70 mm2, 3 m, 300 A, 0.490, 2.0, MEETS", "12 V, 50 mm2, 2 m, 400 A, 0.618, 2.0, MEETS",
        "24 V, 35 mm2, 4 m, 250 A, 1.108, 4.0, FALLS_SHORT",
        "12 V, 2/0 AWG, 10 ft, 300 A, 0.468, 2.0, MEETS", "12 V, 2/0 AWG, 120 in, 300 A, 0.468, 2.0, MEETS",
        "12 V, 35 mm2, 2 m, 300 A, 0.665, 2.0, FALLS_SHORT" })
    void keepsTheResistance(String system, String size, String lengthOfEach, String cranking, double dropV, double limitMilliohm, Standing standing) {
        circuit(system, size, StrandClass.CLASS_5PLAIN, lengthOfEach);
        Current current = Current.valueOf(cranking);
        set.setCrankingCurrent(current);
        judge(CrankingResistanceLight.check(), record).is(standing).measured(1000 * dropV / current.si(), "mohm", 1000 * 0.0005 / current.si())
            .limit(limitMilliohm, "mohm", 1e-9);
    }

    @Test
    void exactlyAtTheLimit() {
        circuit("12 V", "1 mm2", StrandClass.CLASS_5PLAIN, "51.2820512820513 mm"); // IEC 60228: 19.5 ohm/km; 2 mohm over 102.564 mm
        judge(CrankingResistanceLight.check(), record).meets();
    }

    @Test
    void sentenceNamesTheDrop() {
        circuit("12 V", "70 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        set.setCrankingCurrent(Current.of(300, "A"));
        assertThat(judge(CrankingResistanceLight.check(), record).verdict().sentence()).contains("489.6 mV"); // 0.490 V, as above
    }

    @Test
    void tinnedStrandsHaveMore() {
        circuit("12 V", "70 mm2", StrandClass.CLASS_5TINNED, "3 m");
        judge(CrankingResistanceLight.check(), record).meets().measured(1.662, "mohm", 0.0005); // IEC 60228: 0.277 ohm/km
    }

    @Test
    void makersResistanceTakesThePlace() {
        circuit("12 V", "70 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        set.getMakerLimits().setMaximumCrankingCircuitResistance(Resistance.of(1.5, "mohm"));
        judge(CrankingResistanceLight.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void remedyIsTheNextSize() {
        circuit("24 V", "35 mm2", StrandClass.CLASS_5PLAIN, "4 m");
        judge(CrankingResistanceLight.check(), record).fallsShort().afterRemedy().meets();
        // IEC 60228: 50 mm2 has 0.386 ohm/km, 3.09 mohm over 8 m
        assertThat(record.getStartingBattery().getCables()).extracting(CableRun::getConductorSize).containsOnly("50 mm2");
    }

    @Test
    void remedyKeepsEachCablesOwnSeries() {
        circuit("12 V", "35 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        record.getStartingBattery().getCables().get(1).setConductorSize("2 AWG");
        judge(CrankingResistanceLight.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getStartingBattery().getCables().get(0).getConductorSize()).endsWith("mm2");
        assertThat(record.getStartingBattery().getCables().get(1).getConductorSize()).endsWith("AWG");
    }

    @Test
    void remedyComputesNothingWhenNoCableIsLargeEnough() {
        circuit("12 V", "70 mm2", StrandClass.CLASS_5PLAIN, "60 m");
        assertThat(judge(CrankingResistanceLight.check(), record).fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void cannotTellWithoutTheReturn() {
        set.setSystemVoltage(Voltage.of(12, "V"));
        CableRun positive = Wiring.add(record, CableFunction.CRANKING_POSITIVE);
        positive.setConductorSize("2/0 AWG");
        positive.setLength(Length.of(3, "m"));
        judge(CrankingResistanceLight.check(), record).cannotTell("startingBattery.cables.length");
    }

    @Test
    void cannotTellWithoutTheMakeOfMetricCable() {
        circuit("12 V", "70 mm2", StrandClass.NOT_ENTERED, "3 m");
        judge(CrankingResistanceLight.check(), record).cannotTell("startingBattery.cables[0].strandClass", "startingBattery.cables[1].strandClass");
    }

    @Test
    void cannotTellWithoutCables() {
        judge(CrankingResistanceLight.check(), record).cannotTell("generatorSet.systemVoltage", "startingBattery.cables.conductorSize",
            "startingBattery.cables.length");
    }

    @Test
    void doesNotApplyWhereItHasNoFigure() {
        circuit("48 V", "70 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        judge(CrankingResistanceLight.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToASizeThatCannotBeRead() {
        circuit("12 V", "70", StrandClass.CLASS_5PLAIN, "3 m");
        judge(CrankingResistanceLight.check(), record).doesNotApply();
    }
}
