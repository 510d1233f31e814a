// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import garboard.checks.Catalogue;
import garboard.checks.Evaluator;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Judged;

/**
 * Looks at two checks that ask for the same, one as law and one as practice.
 *
 * @param record an installation in which what both ask for is missing
 */
record LawAndPractice(CommissioningRecord record) {

    private static final Catalogue CATALOGUE = Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(),
        new SmallPassengerVessels());

    void byTheLawAlone(String practice, String law, String reason) {
        assertThat(judged(law).standing()).as("%s as law: %s", law, judged(law).sentence()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(judged(practice).standing()).as("%s beside the law", practice).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(judged(practice).sentence()).contains(reason);
    }

    void byThePracticeAlone(String practice, String law) {
        assertThat(judged(law).standing()).as("%s where it does not bind", law).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(judged(practice).standing()).as("%s without the law: %s", practice, judged(practice).sentence()).isEqualTo(Standing.FALLS_SHORT);
    }

    /** The verdict of a check that has one subject in the record. */
    Verdict judged(String id) {
        List<Verdict> verdicts = new Evaluator(CATALOGUE).evaluate(CATALOGUE.find(id).orElseThrow(), record, Judged.DAY);
        assertThat(verdicts).as(id).hasSize(1);
        return verdicts.getFirst();
    }
}
