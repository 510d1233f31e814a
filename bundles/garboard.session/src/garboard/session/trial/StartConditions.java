// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Gravity;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Stop;
import garboard.session.StopStanding;

/**
 * What must hold before a set is started for the first time, as the checks say it now: nothing that endangers people, nothing in water, exhaust,
 * air, fuel or battery that could ruin the set. It warns; the person decides, and the record says what stood open.
 *
 * @param conditions one for each topic that any check speaks of
 */
public record StartConditions(List<Condition> conditions) {

    private static final Comparator<Verdict> WORST = Comparator.comparing(Verdict::standing).thenComparing(verdict -> verdict.check().gravity());

    /** What a condition is about. */
    public enum Topic {
        PEOPLE, SIPHON, RAW_WATER, MUFFLER, EXHAUST, FUEL, BATTERY, AIR, OUTPUT, OTHER
    }

    /**
     * One condition.
     *
     * @param topic what it is about
     * @param open the verdicts that keep it from holding, worst first
     * @param met how many checks are met or accepted
     */
    public record Condition(Topic topic, List<Verdict> open, int met) {

        /** {@return whether a shortfall is known, not only something not entered} */
        public boolean fallsShort() {
            return open.stream().anyMatch(Verdict::needsAction);
        }

        public boolean holds() {
            return open.isEmpty();
        }

        /** {@return the standing of the worst verdict} */
        public Standing standing() {
            return open.isEmpty() ? Standing.MEETS : open.getFirst().standing();
        }

        public long cannotTell() {
            return open.stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL).count();
        }
    }

    public static StartConditions of(Evaluation evaluation) {
        Map<Topic, List<Verdict>> byTopic = new EnumMap<>(Topic.class);
        for (Verdict verdict : evaluation.verdicts()) {
            if (verdict.standing() != Standing.DOES_NOT_APPLY) {
                topic(verdict).ifPresent(topic -> byTopic.computeIfAbsent(topic, key -> new ArrayList<>()).add(verdict));
            }
        }
        return new StartConditions(Arrays.stream(Topic.values()).filter(byTopic::containsKey)
            .map(topic -> condition(topic, byTopic.get(topic))).toList());
    }

    private static Condition condition(Topic topic, List<Verdict> verdicts) {
        List<Verdict> open = verdicts.stream().filter(verdict -> verdict.standing().compareTo(Standing.CANNOT_TELL) <= 0).sorted(WORST).toList();
        return new Condition(topic, open, verdicts.size() - open.size());
    }

    /** What endangers people comes first and once, wherever it is; a mere defect is no reason to wait with the start. */
    private static Optional<Topic> topic(Verdict verdict) {
        Stop stop = StopStanding.stop(verdict);
        if (stop.stage() != Stop.Stage.INSTALLATION) {
            return Optional.empty();
        }
        return switch (verdict.check().gravity()) {
            case DANGER_TO_PEOPLE -> Optional.of(Topic.PEOPLE);
            case DANGER_TO_MACHINE -> Optional.of(machineTopic(stop, verdict.check().id()));
            case DEFECT, ADVICE -> Optional.empty();
        };
    }

    private static Topic machineTopic(Stop stop, String check) {
        return switch (stop) {
            case RAW_WATER -> check.startsWith("SIPHON-") ? Topic.SIPHON : Topic.RAW_WATER;
            case EXHAUST -> check.contains("MUFFLER") || check.contains("DRAIN") ? Topic.MUFFLER : Topic.EXHAUST;
            case FUEL -> Topic.FUEL;
            case STARTING_BATTERY -> Topic.BATTERY;
            case VENTILATION -> Topic.AIR;
            case AC_OUTPUT -> Topic.OUTPUT;
            default -> Topic.OTHER;
        };
    }

    /** {@return the verdicts that need action, those on people first} */
    public List<Verdict> shortfalls() {
        return conditions.stream().flatMap(condition -> condition.open().stream()).filter(Verdict::needsAction).toList();
    }

    /** {@return whether something that endangers people falls short} */
    public boolean endangersPeople() {
        return shortfalls().stream().anyMatch(verdict -> verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE);
    }

    public long cannotTell() {
        return conditions.stream().mapToLong(Condition::cannotTell).sum();
    }
}
