// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.ValveKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class SeacockKindTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged kind(ValveKind kind) {
        record.getRawWater().getSeacock().setKind(kind);
        return judge(SeacockKind.check(), record);
    }

    @Test
    void quarterTurnValvesMeet() {
        // ABYC H-27, quoted: quarter-turn lever, no gate valve, no household valve
        kind(ValveKind.FLANGED_SEACOCK).meets();
        kind(ValveKind.IN_LINE_BALL_VALVE).meets();
    }

    @Test
    void gateAndHouseholdValvesFallShort() {
        kind(ValveKind.HOUSEHOLD_BALL_VALVE).fallsShort();
        kind(ValveKind.GATE_VALVE).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutAValve() {
        kind(ValveKind.NONE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(SeacockKind.check(), record).cannotTell("rawWater.seacock.kind");
    }
}
