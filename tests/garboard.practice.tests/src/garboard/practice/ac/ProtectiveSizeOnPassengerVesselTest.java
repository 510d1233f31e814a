// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;

class ProtectiveSizeOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void passengers() {
        Board.passengers(record);
    }

    // 46 CFR 183.372(c) refers to NFPA 70, Table 250.122 as quoted: 60 A 10 AWG, 100 A 8
    @ParameterizedTest
    @CsvSource({ "10 AWG, 60 A, MEETS", "10 AWG, 70 A, FALLS_SHORT", "16 mm2, 63 A, MEETS" })
    void byTheDevice(String size, String device, Standing standing) {
        record.getAcOutput().setProtectiveConductorSize(size);
        record.getAcOutput().setProtectionRating(Current.valueOf(device));
        judge(ProtectiveSizeOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void remedyIsALargerConductor() {
        record.getAcOutput().setProtectiveConductorSize("10 AWG");
        record.getAcOutput().setProtectionRating(Current.of(70, "A"));
        judge(ProtectiveSizeOnPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectiveConductorSize()).isEqualTo("8 AWG");
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ProtectiveSizeOnPassengerVessel.check(), record).cannotTell("acOutput.protectiveConductorSize", "acOutput.protectionRating");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ProtectiveSizeOnPassengerVessel.check(), record).doesNotApply();
    }
}
