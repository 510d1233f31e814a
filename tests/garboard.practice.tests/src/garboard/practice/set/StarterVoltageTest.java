// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

class StarterVoltageTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "12 V, 12 V, MEETS", "24 V, 24 V, MEETS", "12.6 V, 12 V, MEETS", "12 V, 24 V, FALLS_SHORT", "24 V, 12 V, FALLS_SHORT" }) // derived
    void sameNominalVoltage(String starter, String system, Standing standing) {
        record.getGeneratorSet().setStarterVoltage(Voltage.valueOf(starter));
        record.getGeneratorSet().setSystemVoltage(Voltage.valueOf(system));
        judge(StarterVoltage.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutBoth() {
        judge(StarterVoltage.check(), record).cannotTell("generatorSet.starterVoltage", "generatorSet.systemVoltage");
    }
}
