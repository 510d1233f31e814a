// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

/** What a shortfall can do. The order is from the gravest to the mildest. */
public enum Gravity {
    /** Somebody may be hurt: fire, carbon monoxide, shock, sinking. */
    DANGER_TO_PEOPLE("danger to people"),
    /** The set or the vessel's machinery may be ruined. */
    DANGER_TO_MACHINE("danger to the machine"),
    /** It will work badly, wear early or be refused by whoever inspects it. */
    DEFECT("defect"),
    /** It could be better. */
    ADVICE("advice");

    private final String label;

    Gravity(String label) {
        this.label = label;
    }

    /** The words used in text, workbook and window. */
    public String label() {
        return label;
    }
}
