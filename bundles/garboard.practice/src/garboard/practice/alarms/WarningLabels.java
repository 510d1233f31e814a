// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__WARNING_LABELS;
import static garboard.model.GarboardPackage.Literals.MOUNTING__LABELS_POSTED;

import java.util.List;
import java.util.stream.Stream;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.Mounting;

/** The warnings hang where they are needed. The question stands with the mounting as well; either answer will do. */
final class WarningLabels {

    private WarningLabels() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-LABELS", AlarmsAndSafety.class)
            .title("Warning labels are posted")
            .why("Whoever does not know the boat has to learn of carbon monoxide, hot and turning parts and mains voltage before he touches them.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("carbon monoxide, hot and turning parts, mains voltage, order of starting: at their places and readable")
            .applies(Condition.<AlarmsAndSafety>when("unless marked as not applicable").known().uses(path(ALARMS_AND_SAFETY__WARNING_LABELS),
                path(MOUNTING__LABELS_POSTED)).test(s -> answers(s).isEmpty() || !answers(s).stream().allMatch(Answer.NOT_APPLICABLE::equals),
                    "marked as not applicable by the person who filled it in"))
            .needsWhen(s -> answers(s).isEmpty(), path(ALARMS_AND_SAFETY__WARNING_LABELS))
            .uses(ALARMS_AND_SAFETY__WARNING_LABELS, MOUNTING__LABELS_POSTED)
            .holds(s -> {
                boolean posted = !answers(s).contains(Answer.NO);
                return Comparison.holds(posted ? "the warning labels are posted" : "a warning label is missing", posted);
            })
            .remedy("Post the labels on the set, at the hatch and at the start panel")
            .build();
    }

    private static List<Answer> answers(Situation<? extends AlarmsAndSafety> s) {
        return Stream.of(s.subject().getWarningLabels(), s.optional(s.record().getMounting(), Mounting::getLabelsPosted).orElse(Answer.UNANSWERED))
            .filter(answer -> answer != Answer.UNANSWERED).toList();
    }
}
