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

class OutputProtectedByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "CIRCUIT_BREAKER, MEETS", "FUSE, MEETS", "NONE, FALLS_SHORT" }) // 33 CFR 183.455(a)
    void protectedBySomething(ProtectionKind device, Standing standing) {
        Board.gasolineBoat(record);
        record.getAcOutput().setProtectionDevice(device);
        judge(OutputProtectedByLaw.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheDevice() {
        Board.gasolineBoat(record);
        judge(OutputProtectedByLaw.check(), record).cannotTell("acOutput.protectionDevice");
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        Board.dieselBoat(record);
        judge(OutputProtectedByLaw.check(), record).doesNotApply();
    }
}
