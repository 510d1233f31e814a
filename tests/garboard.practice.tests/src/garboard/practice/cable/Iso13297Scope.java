// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import garboard.checks.Check;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.InsulationRating;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Voltage;

/** ISO 13297:2020 (scope text): single-phase alternating current to 250 V; three-phase small craft go by IEC 60092-507. */
final class Iso13297Scope {

    private Iso13297Scope() {
    }

    /** A good output cable meets the check at one phase and 230 V; at three phases or 400 V nothing is said of it. */
    static void isKept(Check<CableRun> check) {
        CommissioningRecord record = Installation.empty();
        isKept(check, record, record.getAcOutput().getOutputCable());
    }

    /** The same of another cable, which has to be the only one that the check judges. */
    static void isKept(Check<CableRun> check, CommissioningRecord record, CableRun run) {
        good(run);
        GeneratorSet set = record.getGeneratorSet();
        set.setPhases(PhaseSystem.SINGLE_PHASE);
        set.setRatedVoltage(Voltage.of(230, "V"));
        judge(check, record).meets();
        set.setRatedVoltage(Voltage.of(400, "V"));
        judge(check, record).doesNotApply();
        set.setRatedVoltage(Voltage.of(208, "V"));
        set.setPhases(PhaseSystem.THREE_PHASE);
        judge(check, record).doesNotApply();
    }

    private static void good(CableRun run) {
        run.setFunction(CableFunction.AC_OUTPUT);
        run.setConductorSize("16 mm2");
        run.setInsulation(InsulationRating.C105);
        run.setInEngineSpace(Answer.NO);
        run.setConductorsInBundle(3);
        run.setSheathedToProtection(Answer.YES);
        run.setConnectedToBatteryTerminal(Answer.NO);
        run.setCurrent(Current.of(30, "A"));
        run.setSystemVoltage(Voltage.of(230, "V"));
        run.setProtection(ProtectionKind.CIRCUIT_BREAKER);
        run.setProtectionRating(Current.of(32, "A"));
        run.setSupportSpacing(Length.of(250, "mm"));
    }
}
