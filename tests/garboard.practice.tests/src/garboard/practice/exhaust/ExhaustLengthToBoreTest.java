// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustLengthToBoreTest {

    private static CommissioningRecord run(String port, String bore, String up, String down) {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getMuffler().setOutletBore(Length.valueOf(port));
        add(record, ExhaustSection.MUFFLER_TO_CREST, bore, up);
        add(record, ExhaustSection.CREST_TO_OUTLET, bore, down);
        return record;
    }

    // 60 bores of 50.8 mm are 3.05 m, with the bore enlarged by 20 %: Gerr; 30 bores are 1.52 m: from memory
    @ParameterizedTest
    @CsvSource({ "50.8 mm, 1.0 m, 0.524 m, 1.52, MEETS", "50.8 mm, 1.0 m, 0.53 m, 1.52, FALLS_SHORT", "60.96 mm, 2.0 m, 1.048 m, 3.05, MEETS",
            "63.5 mm, 2.0 m, 1.05 m, 3.05, FALLS_SHORT", "2.4 in, 5 ft, 5 ft, 3.05, MEETS" })
    void allowsThirtyBoresOrSixtyWithALargerHose(String bore, String up, String down, double limit, Standing expected) {
        judge(ExhaustLengthToBore.check(), run("50.8 mm", bore, up, down)).is(expected).limit(limit, "m", 0.005);
    }

    @Test
    void theLargerHoseMeets() {
        // 1.2 x 50.8 mm = 60.96 mm; the next size is 2 1/2 in
        judge(ExhaustLengthToBore.check(), run("50.8 mm", "50.8 mm", "1.5 m", "1.5 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void beyondSixtyBoresNoWidthOfHoseIsNamed() {
        Verdict verdict = judge(ExhaustLengthToBore.check(), run("50.8 mm", "50.8 mm", "3 m", "3 m")).fallsShort().verdict();
        assertThat(verdict.remedy().orElseThrow().changes()).isEmpty();
        assertThat(verdict.remedy().orElseThrow().text()).contains("measure the back pressure");
    }

    @Test
    void theMakersLengthTakesThePlaceOfTheRuleOfThumb() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST).setLength(Length.valueOf("3 m"));
        add(record, ExhaustSection.CREST_TO_OUTLET).setLength(Length.valueOf("3 m"));
        record.getGeneratorSet().getMakerLimits().setMaximumExhaustLength(Length.valueOf("20 ft"));
        judge(ExhaustLengthToBore.check(), record).meets().limitFromMaker();
    }

    @Test
    void cannotTellWithoutLengthsBoresOrPort() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST);
        judge(ExhaustLengthToBore.check(), record).cannotTell("exhaust.sections[run-1].length");
        CommissioningRecord noPort = run("2 in", "2 in", "1 m", "1 m");
        exhaust(noPort).getMuffler().setOutletBore(null);
        judge(ExhaustLengthToBore.check(), noPort).cannotTell("exhaust.muffler.outletBore");
    }
}
