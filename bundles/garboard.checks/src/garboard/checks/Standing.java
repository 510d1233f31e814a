// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

/** What a check says about its subject. The order is the order in which people want to read them: worst first. */
public enum Standing {
    /** The check itself failed; our fault, shown and never swallowed. */
    CHECK_BROKE("check broke"),
    /** Measured is on the wrong side of the limit, by more than the measurement's uncertainty. */
    FALLS_SHORT("falls short"),
    /** The limit lies within the uncertainty of the measured value. */
    BORDERLINE("borderline"),
    /** Something the check needs is not entered. Never a pass. */
    CANNOT_TELL("cannot tell"),
    /** A person took responsibility for a shortfall, with name and reason. The shortfall stays visible. */
    ACCEPTED("accepted"),
    /** Measured is on the right side of the limit without doubt. */
    MEETS("meets"),
    /** The rule does not concern this installation; the reason is given. */
    DOES_NOT_APPLY("does not apply");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    /** The word used in text, workbook and window. */
    public String label() {
        return label;
    }
}
