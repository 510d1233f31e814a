// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** What was measured on a set, and the performance class that it reaches by it. Immutable: each step makes a new one. */
public final class ClassEvaluation {

    /** Figures in per cent meet a limit exactly in decimals, not in binary. */
    private static final double ROUNDING = 1e-9;

    private final SetTraits set;
    private final Map<ClassCriterion, Quantity<?>> measured;

    private ClassEvaluation(SetTraits set, Map<ClassCriterion, Quantity<?>> measured) {
        this.set = set;
        this.measured = measured;
    }

    public static ClassEvaluation of(SetTraits set) {
        return new ClassEvaluation(set, new EnumMap<>(ClassCriterion.class));
    }

    /** Adds a measured share; its sign does not matter. */
    public ClassEvaluation with(ClassCriterion criterion, Ratio share) {
        if (criterion.isTime()) {
            throw OutOfRangeException.of(criterion.name(), share, "a time");
        }
        return plus(criterion, share);
    }

    /** Adds a measured recovery time. */
    public ClassEvaluation with(ClassCriterion criterion, TimeSpan time) {
        if (!criterion.isTime()) {
            throw OutOfRangeException.of(criterion.name(), time, "a share");
        }
        return plus(criterion, time);
    }

    /** The best class of which every measured criterion keeps the limit; nothing where G1 is missed or nothing was measured. */
    public Optional<PerformanceClass> reached() {
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        return Arrays.stream(PerformanceClass.values()).takeWhile(wanted -> exceeding(wanted).isEmpty()).reduce((lower, higher) -> higher);
    }

    /** What keeps the set out of a class. */
    public List<Obstacle> exceeding(PerformanceClass wanted) {
        return measured.entrySet().stream().flatMap(entry -> entry.getKey().limit(wanted, set)
                .filter(limit -> Math.abs(entry.getValue().si()) > limit.si() * (1 + ROUNDING))
                .map(limit -> new Obstacle(entry.getKey(), entry.getValue(), limit)).stream()).toList();
    }

    /** What prevents the class above the reached one; empty at G3. */
    public List<Obstacle> preventingNext() {
        if (measured.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(PerformanceClass.values()).map(this::exceeding).filter(obstacles -> !obstacles.isEmpty()).findFirst().orElse(List.of());
    }

    /** What no figure was given for: a class is proven only when nothing is missing. */
    public List<ClassCriterion> notMeasured() {
        return Arrays.stream(ClassCriterion.values()).filter(criterion -> !measured.containsKey(criterion)).toList();
    }

    private ClassEvaluation plus(ClassCriterion criterion, Quantity<?> value) {
        Map<ClassCriterion, Quantity<?>> more = new EnumMap<>(ClassCriterion.class);
        more.putAll(measured);
        more.put(criterion, value);
        return new ClassEvaluation(set, more);
    }

    /** A measured figure beyond the limit of a class. */
    public record Obstacle(ClassCriterion criterion, Quantity<?> measured, Quantity<?> limit) {
    }
}
