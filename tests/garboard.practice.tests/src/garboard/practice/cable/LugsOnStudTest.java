// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;

class LugsOnStudTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @ParameterizedTest
    @CsvSource({ "1, MEETS", "4, MEETS", "5, FALLS_SHORT" }) // ABYC E-11 (quoted): at most four
    void fourAtMost(int lugs, Standing standing) {
        run.setLugsOnStud(lugs);
        judge(LugsOnStud.check(), record).is(standing);
    }

    @Test
    void remedyMovesTheOthers() {
        run.setLugsOnStud(6);
        judge(LugsOnStud.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheNumber() {
        judge(LugsOnStud.check(), record).cannotTell("startingBattery.cables[0].lugsOnStud");
    }
}
