// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;

class OutputProtectedInAnyBoatTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "CIRCUIT_BREAKER, MEETS", "FUSE, MEETS", "NONE, FALLS_SHORT" }) // 33 CFR 183.455(a) as a yardstick
    void protectedBySomething(ProtectionKind device, Standing standing) {
        record.getAcOutput().setProtectionDevice(device);
        judge(OutputProtectedInAnyBoat.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheDevice() {
        judge(OutputProtectedInAnyBoat.check(), record).cannotTell("acOutput.protectionDevice");
    }

    @Test
    void doesNotApplyWhereALawSpeaks() {
        Board.gasolineBoat(record);
        judge(OutputProtectedInAnyBoat.check(), record).doesNotApply();
        Board.dieselBoat(record);
        Board.passengers(record);
        judge(OutputProtectedInAnyBoat.check(), record).doesNotApply();
    }
}
