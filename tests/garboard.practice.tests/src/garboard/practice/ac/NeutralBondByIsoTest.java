// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.VesselService;

class NeutralBondByIsoTest {

    private final CommissioningRecord record = Board.yacht();

    // ISO 13297 6.8 as quoted: bonded at the set, shore neutral never bonded aboard
    @ParameterizedTest
    @CsvSource({ "AT_GENERATOR, YES, MEETS", "SWITCHED_WITH_SOURCE, YES, MEETS", "AT_SWITCHBOARD, YES, FALLS_SHORT",
        "AT_SWITCHBOARD, UNANSWERED, FALLS_SHORT", "AT_SWITCHBOARD, NOT_APPLICABLE, MEETS", "SEVERAL, YES, FALLS_SHORT", "NONE, YES, FALLS_SHORT" })
    void atTheSourceInUse(NeutralBond bond, Answer shoreInlet, Standing standing) {
        record.getAcOutput().setNeutralBond(bond);
        record.getAcOutput().setShoreInletResidualDevice(shoreInlet);
        judge(NeutralBondByIso.check(), record).is(standing);
    }

    @Test
    void remedyBondsAtTheSet() {
        record.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        judge(NeutralBondByIso.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheBond() {
        judge(NeutralBondByIso.check(), record).cannotTell("acOutput.neutralBond");
    }

    // ISO 13297:2020+A1:2022, scope: single-phase up to 250 V
    @ParameterizedTest
    @CsvSource({ "400 V, THREE_PHASE, RECREATIONAL", "251 V, SINGLE_PHASE, RECREATIONAL", "230 V, SINGLE_PHASE, SMALL_PASSENGER" })
    void doesNotApplyOutsideItsScopeOrWhereTheLawSpeaks(String voltage, PhaseSystem phases, VesselService service) {
        Board.plate(record, "8 kVA", voltage, phases);
        record.getVessel().setService(service);
        record.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        judge(NeutralBondByIso.check(), record).doesNotApply();
    }

    @Test
    void aSplitPhaseSetOf240VoltIsWithinTheScope() {
        Board.plate(record, "8 kVA", "240 V", PhaseSystem.SPLIT_PHASE);
        record.getAcOutput().setNeutralBond(NeutralBond.SEVERAL);
        judge(NeutralBondByIso.check(), record).fallsShort();
    }

    @Test
    void exactly250VoltAreWithinTheScope() {
        Board.plate(record, "8 kVA", "250 V", PhaseSystem.SINGLE_PHASE);
        record.getAcOutput().setNeutralBond(NeutralBond.AT_GENERATOR);
        judge(NeutralBondByIso.check(), record).meets();
    }
}
