// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class SupportsByIsoTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    // ISO 10133 clause 7 (quoted): 450 mm, battery cables and sheathed cables 300 mm
    @ParameterizedTest
    @CsvSource({ "OTHER_DC, NO, NO, 450 mm, 450, MEETS", "OTHER_DC, NO, NO, 17.7 in, 450, MEETS", "OTHER_DC, NO, NO, 18 in, 450, FALLS_SHORT",
        "OTHER_DC, YES, NO, 400 mm, 300, FALLS_SHORT", "OTHER_DC, NO, YES, 400 mm, 300, FALLS_SHORT",
        "CRANKING_POSITIVE, UNANSWERED, NO, 400 mm, 300, FALLS_SHORT",
        "CRANKING_NEGATIVE, UNANSWERED, UNANSWERED, 300 mm, 300, MEETS" })
    void heldAtCloseIntervals(CableFunction function, Answer fromBattery, Answer sheathed, String spacing, double mostMm, Standing standing) {
        CableRun run = Wiring.add(record, function);
        run.setConnectedToBatteryTerminal(fromBattery);
        run.setSheathedToProtection(sheathed);
        run.setSupportSpacing(Length.valueOf(spacing));
        judge(SupportsByIso.check(), record).is(standing).limit(mostMm, "mm", 1e-9);
    }

    @Test
    void theOutputCableNeedsNoBattery() {
        CommissioningRecord whole = Installation.empty();
        whole.getAcOutput().getOutputCable().setSupportSpacing(Length.of(450, "mm"));
        judge(SupportsByIso.check(), whole).cannotTell("generatorSet.phases"); // single-phase only: ISO 13297:2020, scope text
        whole.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        judge(SupportsByIso.check(), whole).meets();
    }

    @Test
    void doesNotApplyToTheOutputCableOfThreePhases() {
        Iso13297Scope.isKept(SupportsByIso.check());
    }

    @Test
    void remedyAddsSupports() {
        CableRun run = Wiring.add(record, CableFunction.CRANKING_POSITIVE);
        run.setSupportSpacing(Length.of(600, "mm"));
        judge(SupportsByIso.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        CableRun run = Wiring.add(record, CableFunction.OTHER_DC);
        judge(SupportsByIso.check(), record).cannotTell("startingBattery.cables[0].supportSpacing");
        run.setSupportSpacing(Length.of(400, "mm"));
        judge(SupportsByIso.check(), record).cannotTell("startingBattery.cables[0].connectedToBatteryTerminal");
    }
}
