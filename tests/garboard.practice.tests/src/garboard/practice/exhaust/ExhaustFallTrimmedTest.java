// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;
import garboard.quantity.Angle;
import garboard.quantity.Length;

class ExhaustFallTrimmedTest {

    private static CommissioningRecord falls(String fall, String length, String trim) {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setDesignTrim(Angle.valueOf(trim));
        ExhaustSectionRun run = add(record, ExhaustSection.CREST_TO_OUTLET);
        run.setFall(Length.valueOf(fall));
        run.setLength(Length.valueOf(length));
        return record;
    }

    @Test
    void aFallThatPassesInHarbourClimbsUnderWay() {
        // 2.386 deg less 3 deg of trim leaves -0.614 deg: derived, recomputed independently
        judge(ExhaustFallTrimmed.check(), falls("100 mm", "2.4 m", "3 deg")).fallsShort().measured(-0.614, "deg", 0.0005).afterRemedy().meets();
    }

    @Test
    void somethingHasToBeLeft() {
        judge(ExhaustFallTrimmed.check(), falls("100 mm", "2.4 m", "2 deg")).meets().measured(0.386, "deg", 0.0005);
        judge(ExhaustFallTrimmed.check(), falls("0 mm", "2.4 m", "0 deg")).fallsShort().afterRemedy().meets();
        judge(ExhaustFallTrimmed.check(), falls("1 mm", "2.4 m", "0 deg")).meets();
    }

    @Test
    void cannotTellWithoutFallLengthOrTrim() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.INJECTION_TO_MUFFLER);
        judge(ExhaustFallTrimmed.check(), record).cannotTell("exhaust.sections[run-1].fall", "exhaust.sections[run-1].length", "vessel.designTrim");
    }
}
