// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

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
import garboard.practice.testing.Judged;
import garboard.quantity.Current;

class ChargingDeviceByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    private CableRun lead(String source, String device) {
        CableRun run = Wiring.add(record, CableFunction.CHARGING);
        run.setProtection(ProtectionKind.FUSE);
        run.setCurrent(Current.valueOf(source));
        run.setProtectionRating(Current.valueOf(device));
        return run;
    }

    // 33 CFR 183.460(b), from memory: 120 %: 60 A -> 72 A, 110 A -> 132 A
    @ParameterizedTest
    @CsvSource({ "60 A, 70 A, 72, MEETS", "60 A, 72 A, 72, MEETS", "60 A, 80 A, 72, FALLS_SHORT", "110 A, 132000 mA, 132, MEETS", "110 A, 150 A, 132, FALLS_SHORT" })
    void atMost120PerCent(String source, String device, double mostA, Standing standing) {
        lead(source, device);
        judge(ChargingDeviceByLaw.check(), record).is(standing).limit(mostA, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestStandardRating() {
        CableRun run = lead("60 A", "80 A");
        judge(ChargingDeviceByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionRating().si()).isEqualTo(70); // NFPA 70, 240.6, from memory
    }

    @Test
    void looksAtChargingLeadsOnly() {
        Wiring.add(record, CableFunction.CONTROL);
        assertThat(Judged.all(ChargingDeviceByLaw.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutInputs() {
        Wiring.add(record, CableFunction.CHARGING);
        judge(ChargingDeviceByLaw.check(), record).cannotTell("startingBattery.cables[0].protection", "startingBattery.cables[0].current",
            "startingBattery.cables[0].protectionRating");
    }

    @Test
    void doesNotApplyWithoutADeviceOrAGasolineEngine() {
        lead("60 A", "80 A").setProtection(ProtectionKind.NONE);
        judge(ChargingDeviceByLaw.check(), record).doesNotApply();
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.getStartingBattery().getCables().getFirst().setProtection(ProtectionKind.FUSE);
        judge(ChargingDeviceByLaw.check(), record).doesNotApply();
    }
}
