// SPDX-License-Identifier: EPL-2.0
package garboard.practice.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;

import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Evaluator;
import garboard.checks.Practice;
import garboard.checks.Remedy;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;

/** The verdict of one check on a record, and what a test says of it. */
public final class Judged {

    /** The day on which tests judge, so that intervals do not depend on the calendar. */
    public static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    private final Check<?> check;
    private final CommissioningRecord record;
    private final Verdict verdict;

    private Judged(Check<?> check, CommissioningRecord record, Verdict verdict) {
        this.check = check;
        this.record = record;
        this.verdict = verdict;
    }

    /** Judges a record that has exactly one subject for the check. */
    public static Judged judge(Check<?> check, CommissioningRecord record) {
        List<Verdict> verdicts = all(check, record);
        assertThat(verdicts).as("verdicts of %s", check.id()).hasSize(1);
        return new Judged(check, record, verdicts.getFirst());
    }

    /** All verdicts of a check on a record. */
    public static List<Verdict> all(Check<?> check, CommissioningRecord record) {
        return new Evaluator(Catalogue.of(new OneCheck(check))).evaluate(check, record, DAY);
    }

    public Verdict verdict() {
        return verdict;
    }

    public Judged is(Standing standing) {
        assertThat(verdict.standing()).as("%s: %s", check.id(), verdict.sentence()).isEqualTo(standing);
        assertThat(verdict.sentence()).isNotBlank();
        return this;
    }

    public Judged meets() {
        return is(Standing.MEETS);
    }

    public Judged fallsShort() {
        return is(Standing.FALLS_SHORT);
    }

    public Judged borderline() {
        return is(Standing.BORDERLINE);
    }

    public Judged doesNotApply() {
        return is(Standing.DOES_NOT_APPLY);
    }

    /** Cannot tell, and names exactly these inputs by key. */
    public Judged cannotTell(String... keys) {
        is(Standing.CANNOT_TELL);
        assertThat(verdict.missing()).extracting("key").as("missing inputs of %s", check.id()).containsExactlyInAnyOrder((Object[]) keys);
        return this;
    }

    /** The measured value, in a unit, to half of the last digit given. */
    public Judged measured(double expected, String unit, double half) {
        assertThat(verdict.measured().orElseThrow().in(unit)).as("measured, %s", unit).isCloseTo(expected, within(half));
        return this;
    }

    /** The limit used, in a unit, to half of the last digit given. */
    public Judged limit(double expected, String unit, double half) {
        assertThat(verdict.limit().orElseThrow().value().in(unit)).as("limit, %s", unit).isCloseTo(expected, within(half));
        return this;
    }

    public Judged limitFromMaker() {
        assertThat(verdict.limit().orElseThrow().fromMaker()).as("limit is the maker's").isTrue();
        return this;
    }

    /** Applies the remedy's changes to the record and judges again. */
    public Judged afterRemedy() {
        Remedy remedy = verdict.remedy().orElseThrow();
        assertThat(remedy.changes()).as("computed changes of %s", check.id()).isNotEmpty();
        remedy.changes().forEach(change -> change.target().eSet(change.feature(), change.value()));
        return judge(check, record);
    }

    private record OneCheck(Check<?> check) implements Practice {
        @Override
        public String id() {
            return "one-check";
        }

        @Override
        public String name() {
            return "One check";
        }

        @Override
        public String appliesTo() {
            return "tests";
        }

        @Override
        public List<Check<?>> checks() {
            return List.of(check);
        }
    }
}
