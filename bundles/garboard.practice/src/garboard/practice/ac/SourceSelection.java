// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__INTERLOCKED;
import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__KIND;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.TransferKind;
import garboard.model.TransferSwitch;

/** Whether two sources can come onto one bus: everything but authority. */
final class SourceSelection {

    private SourceSelection() {
    }

    static Check.Builder<TransferSwitch> check(String id) {
        return Check.check(id, TransferSwitch.class)
            .why("Two sources on one bus close out of phase and wreck the alternator; a set that feeds back makes the pins of the shore plug live.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a selector that breaks before it makes, or breakers with a mechanical interlock; a label is none")
            .applies(AcConditions.shoreSupply())
            .needs(TRANSFER_SWITCH__KIND)
            .needsWhen(s -> s.subject().getKind() == TransferKind.INTERLOCKED_BREAKERS, path(TRANSFER_SWITCH__INTERLOCKED))
            .uses(TRANSFER_SWITCH__INTERLOCKED)
            .holds(SourceSelection::compare)
            .remedy("Fit a selector with an off position between the sources, or a mechanical interlock on the breakers");
    }

    private static Comparison compare(Situation<TransferSwitch> s) {
        boolean interlocked = s.subject().getInterlocked() == Answer.YES;
        boolean closedBoth = s.subject().getInterlocked() == Answer.NO;
        return switch (s.subject().getKind()) {
            case ROTARY_SELECTOR -> tried("a rotary selector joins one source at a time", closedBoth);
            case AUTOMATIC_BREAK_BEFORE_MAKE -> tried("an automatic switch breaks before it makes", closedBoth);
            case INTERLOCKED_BREAKERS -> Comparison.holds(interlocked ? "the breakers are interlocked" : "nothing keeps the two breakers from "
                + "being closed together", interlocked);
            case SEPARATE_BREAKERS -> Comparison.holds("separate breakers can be closed together", false);
            case NONE, NOT_ENTERED -> Comparison.holds("nothing selects between the sources", false);
        };
    }

    private static Comparison tried(String good, boolean closedBoth) {
        return Comparison.holds(closedBoth ? "both sources could be closed together when it was tried" : good, !closedBoth);
    }
}
