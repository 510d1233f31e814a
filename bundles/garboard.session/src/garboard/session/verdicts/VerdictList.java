// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/**
 * The verdicts that pass a filter, worst first and grouped by their standing; within a group the gravest first. Immutable: an edit gives a
 * new list.
 */
public final class VerdictList {

    /** A row of the list. */
    public sealed interface Row {
    }

    /** The head of a group. @param count how many verdicts are below it */
    public record Heading(Standing standing, int count) implements Row {
    }

    /** A verdict. */
    public record Line(Verdict verdict) implements Row {
        public VerdictKey key() {
            return VerdictKey.of(verdict);
        }
    }

    private final List<Row> rows = new ArrayList<>();
    private final Map<VerdictKey, Integer> places = new HashMap<>();
    private final Map<Standing, Integer> counts = new EnumMap<>(Standing.class);

    private VerdictList() {
    }

    /**
     * {@return the list}
     *
     * @param kept a verdict that stays in the list though its standing is hidden, so that the one that a person looks at does not vanish
     *     when it is mended
     */
    public static VerdictList of(Evaluation evaluation, VerdictFilter filter, Optional<VerdictKey> kept) {
        var list = new VerdictList();
        Map<Standing, List<Verdict>> groups = new EnumMap<>(Standing.class);
        for (Standing standing : Standing.values()) {
            list.counts.put(standing, 0);
        }
        Predicate<Verdict> passes = filter.besideStanding();
        for (Verdict verdict : evaluation.worstFirst()) {
            boolean isKept = kept.isPresent() && kept.get().equals(VerdictKey.of(verdict));
            boolean passed = passes.test(verdict);
            if (passed) {
                list.counts.merge(verdict.standing(), 1, Integer::sum);
            }
            if (isKept || passed && filter.standings().contains(verdict.standing())) {
                groups.computeIfAbsent(verdict.standing(), none -> new ArrayList<>()).add(verdict);
            }
        }
        groups.forEach(list::add);
        return list;
    }

    private void add(Standing standing, List<Verdict> group) {
        rows.add(new Heading(standing, group.size()));
        for (Verdict verdict : group) {
            places.put(VerdictKey.of(verdict), rows.size());
            rows.add(new Line(verdict));
        }
    }

    public List<Row> rows() {
        return rows;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** {@return the row of a verdict, when it is listed} */
    public OptionalInt place(VerdictKey key) {
        Integer place = places.get(key);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** {@return how many verdicts of a standing pass the rest of the filter, whether that standing is shown or not} */
    public int count(Standing standing) {
        return counts.get(standing);
    }

    /** {@return how many verdicts are listed} */
    public int size() {
        return places.size();
    }
}
