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

class MainDeviceVoltageByLawTest {

    private final CommissioningRecord record = Board.set("6 kVA", "120 V", PhaseSystem.SINGLE_PHASE);

    @BeforeEach
    void applies() {
        Board.gasolineBoat(record);
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    @ParameterizedTest
    @CsvSource({ "250 V, MEETS", "120 V, MEETS", "65 V, FALLS_SHORT" }) // 33 CFR 183.455(d): not less than the nominal voltage
    void madeForTheVoltage(String rating, Standing standing) {
        record.getAcOutput().getOutputCable().setProtectionVoltageRating(Voltage.valueOf(rating));
        judge(MainDeviceVoltageByLaw.check(), record).is(standing).limit(120, "V", 1e-9);
    }

    @Test
    void remedyIsADeviceForTheVoltage() {
        record.getAcOutput().getOutputCable().setProtectionVoltageRating(Voltage.of(65, "V"));
        judge(MainDeviceVoltageByLaw.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(MainDeviceVoltageByLaw.check(), record).cannotTell("acOutput.outputCable.protectionVoltageRating");
    }

    @Test
    void doesNotApplyWithoutADeviceOrAGasolineEngine() {
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(MainDeviceVoltageByLaw.check(), record).doesNotApply();
        record.getAcOutput().setProtectionDevice(ProtectionKind.FUSE);
        Board.dieselBoat(record);
        judge(MainDeviceVoltageByLaw.check(), record).doesNotApply();
    }
}
