// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

/** Which conductors of an alternating-current source a reading is about. */
public enum AcLine {
    /** No matter, or not said. */
    NONE(""),
    L1("line 1"),
    L2("line 2"),
    L3("line 3"),
    /** The sum of all for power, energy and current, the mean for voltage and frequency. */
    ALL("all lines");

    private final String label;

    AcLine(String label) {
        this.label = label;
    }

    /** {@return what to call it, empty for {@link #NONE}} */
    public String label() {
        return label;
    }
}
