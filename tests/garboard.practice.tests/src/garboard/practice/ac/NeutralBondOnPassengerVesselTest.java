// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class NeutralBondOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void passengers() {
        Board.passengers(record);
    }

    // 46 CFR 183.376: one connection, at the switchboard or common ground plate
    @ParameterizedTest
    @CsvSource({ "AT_SWITCHBOARD, MEETS", "AT_GENERATOR, FALLS_SHORT", "SWITCHED_WITH_SOURCE, FALLS_SHORT", "SEVERAL, FALLS_SHORT" })
    void onceAtTheSwitchboard(NeutralBond bond, Standing standing) {
        record.getAcOutput().setNeutralBond(bond);
        judge(NeutralBondOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void remedyBondsAtTheSwitchboard() {
        record.getAcOutput().setNeutralBond(NeutralBond.AT_GENERATOR);
        judge(NeutralBondOnPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheBond() {
        judge(NeutralBondOnPassengerVessel.check(), record).cannotTell("acOutput.neutralBond");
    }

    @Test
    void doesNotApplyToUngroundedSystemsAndOtherVessels() {
        record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        judge(NeutralBondOnPassengerVessel.check(), record).doesNotApply();
        record.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(NeutralBondOnPassengerVessel.check(), record).doesNotApply();
    }
}
