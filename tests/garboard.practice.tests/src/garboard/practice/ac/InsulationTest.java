// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Resistance;

class InsulationTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "1 Mohm, MEETS", "1000 kohm, MEETS", "0.99 Mohm, FALLS_SHORT", "45 Mohm, MEETS", "1 Mohm ±5 %, BORDERLINE" }) // BS 7671 as quoted: 1 Mohm
    void atLeastOneMegohm(String resistance, Standing standing) {
        record.getAcOutput().setInsulationResistance(Resistance.valueOf(resistance));
        judge(Insulation.check(), record).is(standing).limit(1, "Mohm", 1e-9);
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(Insulation.check(), record).cannotTell("acOutput.insulationResistance");
    }
}
