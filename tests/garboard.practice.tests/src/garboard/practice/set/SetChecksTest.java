// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Check;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class SetChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(SetChecks.federal(), SetChecks.standards(), SetChecks.handbook()).<Check<?>>flatMap(List::stream).toList();
    }

    @Test
    void everyIdIsItsOwnAndSpeaksOfTheSet() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("SET-"));
    }

    @Test
    void lawStandsInTheListOfLawOnly() {
        assertThat(SetChecks.federal()).allMatch(check -> check.basis().citation().startsWith("40 CFR") && check.basis().isRegulation());
        assertThat(SetChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(SetChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnAnEmptyRecord() {
        CommissioningRecord nothing = GarboardFactory.eINSTANCE.createCommissioningRecord();
        nothing.setGeneratorSet(GarboardFactory.eINSTANCE.createGeneratorSet());
        for (CommissioningRecord record : List.of(Installation.empty(), nothing)) {
            all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
                .containsOnly(Standing.CANNOT_TELL));
        }
    }
}
