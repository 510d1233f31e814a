// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Remedy;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;

/**
 * What applying a remedy did.
 *
 * @param before the verdict that it was to mend
 * @param after the same verdict now; nothing when its subject is no more
 * @param worse the other verdicts that stand worse by it
 * @param better the other verdicts that stand better by it
 */
public record RemedyOutcome(Verdict before, Optional<Verdict> after, List<VerdictChange> worse, List<VerdictChange> better) {

    public RemedyOutcome {
        worse = List.copyOf(worse);
        better = List.copyOf(better);
    }

    /** Makes the changes of a verdict's remedy, in one step to undo. @param label what the step is called */
    public static RemedyOutcome apply(OpenRecord record, Verdict verdict, String label) {
        Remedy remedy = verdict.remedy().filter(found -> !found.changes().isEmpty())
            .orElseThrow(() -> new IllegalArgumentException(verdict.check().id() + " has no remedy that changes the record"));
        Evaluation before = record.verdicts().evaluation();
        record.apply(remedy, label);
        Evaluation after = record.verdicts().evaluation();
        VerdictKey mended = VerdictKey.of(verdict);
        List<VerdictChange> others = VerdictChange.between(before, after).stream().filter(change -> !change.key().equals(mended)).toList();
        return new RemedyOutcome(verdict, after.verdicts().stream().filter(now -> VerdictKey.of(now).equals(mended)).findFirst(),
            others.stream().filter(VerdictChange::isWorse).toList(), others.stream().filter(VerdictChange::isBetter).toList());
    }
}
