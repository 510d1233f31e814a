// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Signature;
import garboard.model.StoredVerdict;
import garboard.report.VerdictOfTheDay;
import garboard.session.OpenRecord;
import garboard.session.verdicts.VerdictKey;

/**
 * What the checks say otherwise now than on the day of a signature. Only what a check reads shows here: a new telephone number of the owner
 * does not.
 *
 * @param comparable whether the signature keeps the verdicts of its day; one that was typed into a form, or is of an older program, does not
 * @param differences what differs, the worst as it stands now first
 */
public record SinceSignature(boolean comparable, List<Difference> differences) {

    /** What differs of a verdict. */
    public enum What {
        STANDING, FIGURES, CAME, WENT
    }

    /**
     * A verdict that is another one.
     *
     * @param then what was said when it was signed
     * @param now what is said now
     * @param byTime whether the same record would not have been told otherwise on the day of the signature, so that only time has passed
     */
    public record Difference(What what, VerdictKey key, Optional<StoredVerdict> then, Optional<Verdict> now, boolean byTime) {

        /** {@return how it stands now; what went counts as what does not apply} */
        public Standing standing() {
            return now.map(Verdict::standing).orElse(Standing.DOES_NOT_APPLY);
        }
    }

    public SinceSignature {
        differences = List.copyOf(differences);
    }

    /** {@return what changed since a signature was given} */
    public static SinceSignature of(OpenRecord open, Signature signature) {
        if (signature.getVerdicts().isEmpty()) {
            return new SinceSignature(false, List.of());
        }
        Evaluation now = open.verdicts().evaluation();
        List<Difference> differences = differences(signature, now, Map.of());
        if (!differences.isEmpty() && signature.getSignedOn() != null && signature.getSignedOn().isBefore(now.day())) {
            Evaluation thatDay = new Evaluator(open.verdicts().catalogue()).evaluate(open.record(), signature.getSignedOn());
            differences = differences(signature, now, byKey(thatDay));
        }
        return new SinceSignature(true, differences);
    }

    private static Map<VerdictKey, Verdict> byKey(Evaluation evaluation) {
        Map<VerdictKey, Verdict> byKey = new HashMap<>();
        evaluation.verdicts().forEach(verdict -> byKey.put(VerdictKey.of(verdict), verdict));
        return byKey;
    }

    private static List<Difference> differences(Signature signature, Evaluation now, Map<VerdictKey, Verdict> onThatDay) {
        Map<VerdictKey, StoredVerdict> then = new HashMap<>();
        signature.getVerdicts().forEach(stored -> then.put(key(stored), stored));
        var differences = new ArrayList<Difference>();
        for (Verdict verdict : now.verdicts()) {
            VerdictKey key = VerdictKey.of(verdict);
            Optional<StoredVerdict> was = Optional.ofNullable(then.remove(key));
            what(was, verdict).ifPresent(what -> {
                boolean byTime = Optional.ofNullable(onThatDay.get(key)).filter(same -> what(was, same).isEmpty()).isPresent();
                differences.add(new Difference(what, key, was, Optional.of(verdict), byTime));
            });
        }
        then.forEach((key, stored) -> differences.add(new Difference(What.WENT, key, Optional.of(stored), Optional.empty(), false)));
        differences.sort(Comparator.comparing(Difference::byTime).thenComparing(Difference::standing)
            .thenComparing(difference -> difference.key().check()).thenComparing(difference -> difference.key().subject()));
        return differences;
    }

    private static VerdictKey key(StoredVerdict stored) {
        return new VerdictKey(text(stored.getCheck()), text(stored.getSubject()));
    }

    private static Optional<What> what(Optional<StoredVerdict> was, Verdict now) {
        if (was.isEmpty()) {
            return Optional.of(What.CAME);
        }
        VerdictOfTheDay told = VerdictOfTheDay.of(now);
        if (!told.standing().equals(text(was.get().getStanding()))) {
            return Optional.of(What.STANDING);
        }
        boolean same = told.measured().equals(text(was.get().getMeasured())) && told.limit().equals(text(was.get().getLimit()));
        return same ? Optional.empty() : Optional.of(What.FIGURES);
    }

    private static String text(String stored) {
        return Objects.requireNonNullElse(stored, "");
    }

    /** {@return those differences that a change of the record made} */
    public List<Difference> changes() {
        return differences.stream().filter(difference -> !difference.byTime()).toList();
    }
}
