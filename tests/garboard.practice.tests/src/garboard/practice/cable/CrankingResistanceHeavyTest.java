// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.StrandClass;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

class CrankingResistanceHeavyTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    // SAE J541 (quoted), heavy duty: 0.10 V per 100 A at 12 V, 0.17 V at 24 to 32 V; 70 mm2, 6 m loop, 300 A: 0.490 V against 0.30 V
    @ParameterizedTest
    @CsvSource({ "12 V, 70 mm2, 3 m, 1.632, 1.0, FALLS_SHORT", "12 V, 120 mm2, 3 m, 0.966, 1.0, MEETS", "24 V, 70 mm2, 3 m, 1.632, 1.7, MEETS",
        "32 V, 50 mm2, 3 m, 2.316, 1.7, FALLS_SHORT" })
    void keepsTheResistance(String system, String size, String lengthOfEach, double milliohm, double limitMilliohm, Standing standing) {
        record.getGeneratorSet().setSystemVoltage(Voltage.valueOf(system));
        Wiring.cranking(record, size, StrandClass.CLASS_5PLAIN, lengthOfEach);
        judge(CrankingResistanceHeavy.check(), record).is(standing).measured(milliohm, "mohm", 0.0005).limit(limitMilliohm, "mohm", 1e-9);
    }

    @Test
    void remedyIsTheNextSize() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        Wiring.cranking(record, "70 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        judge(CrankingResistanceHeavy.check(), record).fallsShort().afterRemedy().meets();
        // IEC 60228: 95 mm2 has 0.206 ohm/km, 1.24 mohm over 6 m; 120 mm2 0.161 ohm/km, 0.97 mohm
        assertThat(record.getStartingBattery().getCables()).extracting(CableRun::getConductorSize).containsOnly("120 mm2");
    }

    @Test
    void cannotTellWithoutCables() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        judge(CrankingResistanceHeavy.check(), record).cannotTell("startingBattery.cables.conductorSize", "startingBattery.cables.length");
    }

    @Test
    void doesNotApplyWhereTheMakerDecides() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        Wiring.cranking(record, "70 mm2", StrandClass.CLASS_5PLAIN, "3 m");
        record.getGeneratorSet().getMakerLimits().setMaximumCrankingCircuitResistance(Resistance.of(2, "mohm"));
        judge(CrankingResistanceHeavy.check(), record).doesNotApply();
    }
}
