// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import garboard.checks.Evaluation;
import garboard.checks.Gravity;
import garboard.checks.Missing;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Stop;
import garboard.session.StopStanding;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;
import garboard.session.verdicts.Inputs;

/** What the checks leave open. */
final class JudgedPoints {

    /** Up to so many checks of a stop that lack something are named one by one; above that they are counted. */
    private static final int NAMED = 3;
    /** Told under a heading of its own, from the record. */
    static final String IMPELLER = "RAWWATER-IMPELLER-PIECES";

    private final List<OpenPoint> points = new ArrayList<>();
    private final Map<Topic, Map<Stop, List<Verdict>>> untold = new EnumMap<>(Topic.class);

    private JudgedPoints() {
    }

    static List<OpenPoint> of(Evaluation evaluation) {
        var judged = new JudgedPoints();
        evaluation.practicesNotAtHand().forEach(practice -> judged.points
            .add(OpenPoint.of(Topic.PROGRAM, Matter.PRACTICE_NOT_AT_HAND, "practices", practice)));
        evaluation.worstFirst().stream().filter(verdict -> !verdict.check().id().equals(IMPELLER) || verdict.standing() == Standing.CHECK_BROKE)
            .forEach(judged::add);
        judged.addUntold();
        return judged.points;
    }

    private void add(Verdict verdict) {
        boolean people = verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE;
        switch (verdict.standing()) {
            case CHECK_BROKE -> add(Topic.PROGRAM, verdict);
            case FALLS_SHORT -> add(people ? Topic.DANGER : Topic.SHORTFALLS, verdict);
            case BORDERLINE -> add(people ? Topic.DANGER : Topic.TO_KNOW, verdict);
            case CANNOT_TELL -> {
                Topic topic = people ? Topic.DANGER : verdict.check().gravity() == Gravity.ADVICE ? Topic.TO_KNOW : Topic.NOT_JUDGED;
                untold.computeIfAbsent(topic, none -> new EnumMap<>(Stop.class))
                    .computeIfAbsent(StopStanding.stop(verdict), none -> new ArrayList<>()).add(verdict);
            }
            case ACCEPTED -> add(Topic.TO_KNOW, verdict);
            case MEETS, DOES_NOT_APPLY -> { }
        }
    }

    private void add(Topic topic, Verdict verdict) {
        points.add(OpenPoint.of(topic, verdict, Inputs.target(verdict)));
    }

    private void addUntold() {
        untold.forEach((topic, byStop) -> byStop.forEach((stop, verdicts) -> {
            if (verdicts.size() <= NAMED) {
                verdicts.forEach(verdict -> add(topic, verdict));
            } else {
                Set<String> missing = new LinkedHashSet<>();
                verdicts.forEach(verdict -> verdict.missing().stream().map(Missing::key).forEach(missing::add));
                points.add(OpenPoint.of(topic, Matter.UNTOLD, Inputs.target(verdicts.getFirst()), stop.name(), String.valueOf(verdicts.size()),
                    String.valueOf(missing.size())));
            }
        }));
    }
}
