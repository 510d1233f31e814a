// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;

import garboard.checks.Evaluation;
import garboard.checks.Gravity;
import garboard.checks.Standing;

/** The outcome of all checks in one or two sentences. */
final class Outcome {

    private Outcome() {
    }

    static String of(Evaluation evaluation) {
        long broke = evaluation.count(Standing.CHECK_BROKE);
        String fault = broke == 0 ? ""
            : " " + count(broke, "check") + " could not be carried out through a fault of the program.";
        return sentence(evaluation) + fault;
    }

    private static String sentence(Evaluation evaluation) {
        long apply = evaluation.verdicts().size() - evaluation.count(Standing.DOES_NOT_APPLY);
        long shortfalls = evaluation.count(Standing.FALLS_SHORT);
        long borderline = evaluation.count(Standing.BORDERLINE);
        long cannotTell = evaluation.count(Standing.CANNOT_TELL);
        long accepted = evaluation.count(Standing.ACCEPTED);
        if (apply == 0) {
            return "Nothing was checked.";
        }
        var more = new ArrayList<String>();
        if (borderline > 0) {
            more.add(borderline + (borderline == 1 ? " is" : " are") + " borderline");
        }
        if (cannotTell > 0) {
            more.add(cannotTell + " cannot tell because something is not entered");
        }
        if (accepted > 0) {
            more.add(accepted + (accepted == 1 ? " shortfall was" : " shortfalls were") + " accepted by a person");
        }
        if (shortfalls > 0) {
            return "Falls short of practice: " + count(shortfalls, "check") + (shortfalls == 1 ? " is" : " are") + " not met"
                + dangerous(evaluation) + listed("; ", more) + ".";
        }
        if (cannotTell > 0) {
            return "Not complete: no check falls short" + listed(", but ", more) + ".";
        }
        if (borderline > 0 || accepted > 0) {
            return "No check falls short" + listed(", but ", more) + ".";
        }
        return apply == 1 ? "The one check that applies is met." : "All " + apply + " checks that apply are met.";
    }

    private static String dangerous(Evaluation evaluation) {
        long people = evaluation.with(Standing.FALLS_SHORT).stream()
            .filter(verdict -> verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE).count();
        long all = evaluation.count(Standing.FALLS_SHORT);
        return people == 0 ? "" : people < all ? ", " + people + " of them a danger to people" : ", a danger to people";
    }

    private static String listed(String lead, ArrayList<String> parts) {
        if (parts.isEmpty()) {
            return "";
        }
        String last = parts.removeLast();
        return lead + (parts.isEmpty() ? last : String.join(", ", parts) + " and " + last);
    }

    static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
