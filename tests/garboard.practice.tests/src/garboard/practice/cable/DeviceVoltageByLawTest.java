// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.ProtectionKind;
import garboard.quantity.Voltage;

class DeviceVoltageByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        run.setProtection(ProtectionKind.FUSE);
    }

    // 33 CFR 183.455(d): not less than nominal
    @ParameterizedTest
    @CsvSource({ "24 V, 32 V, MEETS", "24 V, 12 V, FALLS_SHORT", "24 V, 24 V, MEETS", "24 V, 24000 mV, MEETS" })
    void atLeastTheCircuits(String system, String device, Standing standing) {
        run.setSystemVoltage(Voltage.valueOf(system));
        run.setProtectionVoltageRating(Voltage.valueOf(device));
        judge(DeviceVoltageByLaw.check(), record).is(standing);
    }

    @Test
    void remedyFitsOneForTheCircuit() {
        run.setSystemVoltage(Voltage.of(24, "V"));
        run.setProtectionVoltageRating(Voltage.of(12, "V"));
        judge(DeviceVoltageByLaw.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DeviceVoltageByLaw.check(), record).cannotTell("startingBattery.cables[0].systemVoltage",
            "startingBattery.cables[0].protectionVoltageRating");
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(DeviceVoltageByLaw.check(), record).doesNotApply();
    }
}
