// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.quantity.Voltage;

class MainDeviceVoltageInAnyBoatTest {

    private final CommissioningRecord record = Board.set("25 kVA", "400 V", PhaseSystem.THREE_PHASE);

    @BeforeEach
    void fitted() {
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    @ParameterizedTest
    @CsvSource({ "690 V, MEETS", "400 V, MEETS", "250 V, FALLS_SHORT" }) // 33 CFR 183.455(d) as a yardstick
    void madeForTheVoltage(String rating, Standing standing) {
        record.getAcOutput().getOutputCable().setProtectionVoltageRating(Voltage.valueOf(rating));
        judge(MainDeviceVoltageInAnyBoat.check(), record).is(standing);
    }

    @Test
    void remedyIsADeviceForTheVoltage() {
        record.getAcOutput().getOutputCable().setProtectionVoltageRating(Voltage.of(250, "V"));
        judge(MainDeviceVoltageInAnyBoat.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(MainDeviceVoltageInAnyBoat.check(), record).cannotTell("acOutput.outputCable.protectionVoltageRating");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        Board.gasolineBoat(record);
        judge(MainDeviceVoltageInAnyBoat.check(), record).doesNotApply();
    }
}
