// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;

class NeutralBondedOnceTest {

    private final CommissioningRecord record = Board.set("25 kVA", "400 V", PhaseSystem.THREE_PHASE);

    // 46 CFR 183.376 as a yardstick: one connection
    @ParameterizedTest
    @CsvSource({ "AT_SWITCHBOARD, MEETS", "AT_GENERATOR, MEETS", "SWITCHED_WITH_SOURCE, MEETS", "SEVERAL, FALLS_SHORT" })
    void once(NeutralBond bond, Standing standing) {
        record.getAcOutput().setNeutralBond(bond);
        judge(NeutralBondedOnce.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheBond() {
        judge(NeutralBondedOnce.check(), record).cannotTell("acOutput.neutralBond");
    }

    @Test
    void doesNotApplyToOnePhaseToUngroundedSystemsOrWhereTheLawSpeaks() {
        record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        judge(NeutralBondedOnce.check(), record).doesNotApply();
        record.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        Board.passengers(record);
        judge(NeutralBondedOnce.check(), record).doesNotApply();
        CommissioningRecord yacht = Board.yacht();
        yacht.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        judge(NeutralBondedOnce.check(), yacht).doesNotApply();
    }
}
