// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.quantity.Current;

class ProtectiveSizeByIsoTest {

    private final CommissioningRecord record = Board.yacht();

    private void conductors(String live, String protective) {
        record.getAcOutput().getOutputCable().setConductorSize(live);
        record.getAcOutput().setProtectiveConductorSize(protective);
        record.getAcOutput().setProtectionRating(Current.of(40, "A"));
    }

    // ISO 13297 from memory: at least the size of the live conductor
    @ParameterizedTest
    @CsvSource({ "10 mm2, 10 mm2, MEETS", "10 mm2, 6 mm2, FALLS_SHORT", "16 mm2, 16 mm2, MEETS", "10 mm2, 6 AWG, MEETS" })
    void asLargeAsTheLiveConductor(String live, String protective, Standing standing) {
        conductors(live, protective);
        judge(ProtectiveSizeByIso.check(), record).is(standing);
    }

    @Test
    void remedyIsTheSizeOfTheLiveConductor() {
        conductors("10 mm2", "6 mm2");
        judge(ProtectiveSizeByIso.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectiveConductorSize()).isEqualTo("10 mm2");
    }

    @Test
    void stepsBackWhereTheConductorIsTooSmallForTheDevice() {
        conductors("10 mm2", "4 mm2"); // NFPA 70 Table 250.122 as quoted: 10 AWG (5.26 mm2) for 60 A
        judge(ProtectiveSizeByIso.check(), record).doesNotApply();
        judge(ProtectiveSizeByNfpa.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ProtectiveSizeByIso.check(), record).cannotTell("acOutput.outputCable.conductorSize", "acOutput.protectiveConductorSize",
            "acOutput.protectionRating");
    }

    @Test
    void doesNotApplyToAmericanGaugesAndThreePhases() {
        conductors("6 AWG", "8 AWG");
        judge(ProtectiveSizeByIso.check(), record).doesNotApply();
        conductors("10 mm2", "6 mm2");
        Board.plate(record, "8 kVA", "400 V", PhaseSystem.THREE_PHASE);
        judge(ProtectiveSizeByIso.check(), record).doesNotApply();
    }
}
