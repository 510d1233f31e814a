// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;
import java.util.OptionalInt;

import garboard.model.Answer;
import garboard.model.ProcedureStep;

/**
 * One line of the procedure.
 *
 * @param number place in the list, from 1
 * @param guided the step of this program, where it is one
 * @param stored what the record holds of it; nothing for a step that nobody has touched yet
 * @param concern whether it concerns the installation
 * @param stillOpen number of the first line before it that is not done, where this one is done
 * @param laterBefore number of the first line before it that was done later, by the times
 */
public record StartLine(int number, Optional<StartStep> guided, Optional<ProcedureStep> stored, Concern concern, OptionalInt stillOpen,
        OptionalInt laterBefore) {

    /** {@return what stays the same while lines come and go} */
    public String id() {
        return guided.map(StartStep::id).orElseGet(() -> stored.orElseThrow().getId());
    }

    public Answer answer() {
        return stored.map(ProcedureStep::getDone).orElse(Answer.UNANSWERED);
    }

    /** {@return whether somebody has still to say something of it} */
    public boolean open() {
        return concern.holds() && (answer() == Answer.UNANSWERED || answer() == Answer.NO);
    }

    StartLine in(int place, OptionalInt open, OptionalInt later) {
        return new StartLine(place, guided, stored, concern, open, later);
    }
}
