// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;

class ProtectiveSizeByNfpaTest {

    private final CommissioningRecord record = Installation.empty();

    private void conductor(String size, String device) {
        record.getAcOutput().setProtectiveConductorSize(size);
        record.getAcOutput().setProtectionRating(Current.valueOf(device));
    }

    // NFPA 70 Table 250.122 as quoted: 15 A 14 AWG, 20 A 12, 60 A 10, 100 A 8, 200 A 6
    @ParameterizedTest
    @CsvSource({ "14 AWG, 15 A, MEETS", "14 AWG, 16 A, FALLS_SHORT", "12 AWG, 20 A, MEETS", "10 AWG, 50 A, MEETS", "10 AWG, 60 A, MEETS",
        "10 AWG, 61 A, FALLS_SHORT", "8 AWG, 100 A, MEETS", "6 mm2, 60 A, MEETS", "4 mm2, 60 A, FALLS_SHORT", "10 AWG, 60000 mA, MEETS" })
    void byTheDevice(String size, String device, Standing standing) {
        conductor(size, device);
        judge(ProtectiveSizeByNfpa.check(), record).is(standing);
    }

    @ParameterizedTest
    @CsvSource({ "4 mm2, 6 mm2", "12 AWG, 10 AWG" })
    void remedyIsTheNextSizeOfTheSameKind(String size, String next) {
        conductor(size, "40 A");
        judge(ProtectiveSizeByNfpa.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectiveConductorSize()).isEqualTo(next);
    }

    @Test
    void cannotTellWithoutInputsOrBeyondTheTable() {
        judge(ProtectiveSizeByNfpa.check(), record).cannotTell("acOutput.protectiveConductorSize", "acOutput.protectionRating");
        conductor("4/0 AWG", "1000 A"); // the table as quoted ends at 800 A
        assertThat(judge(ProtectiveSizeByNfpa.check(), record).cannotTell().verdict().sentence()).contains("800 A");
        conductor("green", "40 A");
        judge(ProtectiveSizeByNfpa.check(), record).cannotTell();
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        conductor("4 mm2", "60 A");
        Board.passengers(record);
        judge(ProtectiveSizeByNfpa.check(), record).doesNotApply();
    }
}
