// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;
import garboard.quantity.Resistance;

class ProtectiveResistanceTest {

    private final CommissioningRecord record = Installation.empty();

    // DGUV Information 203-071: 12.5 m 0.4 ohm; 20 m 0.5 ohm; up to 5 m 0.3 ohm; never more than 1 ohm
    @ParameterizedTest
    @CsvSource({ "12.5 m, 0.4 ohm, 0.4, MEETS", "12.5 m, 0.41 ohm, 0.4, FALLS_SHORT", "20 m, 500 mohm, 0.5, MEETS", "5 m, 0.3 ohm, 0.3, MEETS",
        "5 m, 0.31 ohm, 0.3, FALLS_SHORT", "100 m, 1.1 ohm, 1.0, FALLS_SHORT", "41 ft, 0.4 ohm, 0.4, MEETS" })
    void byTheLength(String length, String resistance, double mostOhm, Standing standing) {
        record.getVessel().setLengthOverall(Length.valueOf(length));
        record.getAcOutput().setProtectiveConductorResistance(Resistance.valueOf(resistance));
        judge(ProtectiveResistance.check(), record).is(standing).limit(mostOhm, "ohm", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ProtectiveResistance.check(), record).cannotTell("acOutput.protectiveConductorResistance", "vessel.lengthOverall");
    }
}
