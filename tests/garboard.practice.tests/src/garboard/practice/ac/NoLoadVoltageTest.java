// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PerformanceClass;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.Voltage;

class NoLoadVoltageTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged noLoad(String voltage, PerformanceClass declared, String power) {
        record.getGeneratorSet().setRatedVoltage(Voltage.of(230, "V"));
        record.getGeneratorSet().setPerformanceClass(declared);
        record.getGeneratorSet().setRatedPower(Power.valueOf(power));
        record.getAcOutput().setNoLoadVoltage(Voltage.valueOf(voltage));
        return judge(NoLoadVoltage.check(), record);
    }

    // DGUV Information 203-032 annex 5, 230 V: G1 253 V (up to 10 kW) or 242 V; G2 236 V; G3 232 V (printed whole volts)
    @ParameterizedTest
    @CsvSource({ "253 V, G1, 10 kW, 253, MEETS", "250 V, G1, 10.1 kW, 242, FALLS_SHORT", "241 V, G1, 20 kW, 242, MEETS", "235.7 V, G2, 5 kW, 236, MEETS",
        "236 V, G2, 5 kW, 236, FALLS_SHORT", "232.3 V, G3, 5 kW, 232, MEETS", "233 V, G3, 5 kW, 232, FALLS_SHORT" })
    void byTheClass(String voltage, PerformanceClass declared, String power, double mostV, Standing standing) {
        noLoad(voltage, declared, power).is(standing).limit(mostV, "V", 0.5);
    }

    @Test
    void exactlyAtTheLimit() {
        noLoad("235.75 V", PerformanceClass.G2, "5 kW").meets(); // 230 x 1.025
        noLoad("235.7 V ±0.1 V", PerformanceClass.G2, "5 kW").is(Standing.BORDERLINE);
    }

    @Test
    void stepsBackWhereTheVoltageIsDangerous() {
        noLoad("254 V", PerformanceClass.G2, "5 kW").doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NoLoadVoltage.check(), record).cannotTell("generatorSet.performanceClass", "acOutput.noLoadVoltage", "generatorSet.ratedVoltage");
        noLoad("231 V", PerformanceClass.G1, "5 kW");
        record.getGeneratorSet().setRatedPower(null);
        judge(NoLoadVoltage.check(), record).cannotTell("generatorSet.ratedPower");
    }

    @Test
    void doesNotApplyToClassG4() {
        noLoad("250 V", PerformanceClass.G4, "5 kW").doesNotApply();
    }
}
