// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.all;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;
import garboard.quantity.Slope;

class ExhaustFallTest {

    private static CommissioningRecord falls(String fall, String length) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.INJECTION_TO_MUFFLER);
        run.setFall(Length.valueOf(fall));
        run.setLength(Length.valueOf(length));
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook: 1/2 in/ft, 41.7 mm/m. A 2.4 m run needs 100 mm, 1.2 m 50 mm, 3.0 m 125 mm: 1/24 of it
    @ParameterizedTest
    @CsvSource({ "100 mm, 2.4 m, MEETS", "99 mm, 2.4 m, FALLS_SHORT", "50 mm, 1.2 m, MEETS", "49 mm, 1.2 m, FALLS_SHORT", "125 mm, 3.0 m, MEETS",
            "124 mm, 3.0 m, FALLS_SHORT", "4 in, 8 ft, MEETS", "3 7/8 in, 8 ft, FALLS_SHORT", "-20 mm, 2.4 m, FALLS_SHORT" })
    void asksForHalfAnInchPerFoot(String fall, String length, Standing expected) {
        judge(ExhaustFall.check(), falls(fall, length)).is(expected).limit(41.7, "mm/m", 0.05).limit(2.386, "deg", 0.0005);
    }

    @ParameterizedTest
    @CsvSource({ "2.4 m, 100", "1.2 m, 50", "3.0 m, 125" })
    void tellsTheFallThatTheLengthNeeds(String length, double millimetres) {
        CommissioningRecord record = falls("10 mm", length);
        judge(ExhaustFall.check(), record).fallsShort().afterRemedy().meets();
        assertThat(exhaust(record).getSections().getFirst().getFall().in("mm")).isEqualTo(millimetres);
    }

    // 2 deg = 34.9 mm/m, 5 deg = 87.5, 10 deg = 176.3: tangents
    @ParameterizedTest
    @CsvSource({ "2 deg, 34.9, MEETS", "5 deg, 87.5, FALLS_SHORT", "10 deg, 176.3, FALLS_SHORT" })
    void theMakersFallTakesThePlaceOfTheHandbooks(String fall, double limit, Standing expected) {
        CommissioningRecord record = falls("100 mm", "2.4 m");
        record.getGeneratorSet().getMakerLimits().setMinimumExhaustFall(Slope.valueOf(fall));
        judge(ExhaustFall.check(), record).is(expected).limit(limit, "mm/m", 0.05).limitFromMaker();
    }

    @Test
    void judgesOnlyThePartsThatHaveToFall() {
        CommissioningRecord record = falls("100 mm", "2.4 m");
        add(record, ExhaustSection.DRY);
        add(record, ExhaustSection.MUFFLER_TO_CREST);
        ExhaustSectionRun last = add(record, ExhaustSection.CREST_TO_OUTLET);
        last.setFall(Length.valueOf("10 mm"));
        last.setLength(Length.valueOf("2 m"));
        List<Verdict> verdicts = all(ExhaustFall.check(), record);
        assertThat(verdicts).extracting(Verdict::standing).containsExactly(Standing.MEETS, Standing.FALLS_SHORT);
    }

    @Test
    void cannotTellWithoutFallAndLengthOrWhatItLiesBetween() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.CREST_TO_OUTLET);
        judge(ExhaustFall.check(), record).cannotTell("exhaust.sections[run-1].fall", "exhaust.sections[run-1].length");
        CommissioningRecord unknown = falls("100 mm", "2.4 m");
        exhaust(unknown).getSections().getFirst().setSection(ExhaustSection.NOT_ENTERED);
        judge(ExhaustFall.check(), unknown).cannotTell("exhaust.sections[run-1].section");
        judge(ExhaustFall.check(), Installation.empty()).cannotTell("exhaust.sections");
    }
}
