// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

/** Ways to look at an installation. */
public enum View {
    /** From starboard, the bow to the right. */
    SIDE,
    /** From aft, starboard to the right. */
    CROSS,
    /** Heights along the runs. */
    RUNS,
    /** Heights above the water against heel. */
    CLEARANCE;

    /** {@return what goes well beside it where there is room for two} */
    public View companion() {
        return switch (this) {
            case SIDE -> CROSS;
            case CROSS, RUNS -> SIDE;
            case CLEARANCE -> CROSS;
        };
    }

    /** {@return whether parts are seen at their places, so that they can be moved across, too} */
    public boolean elevation() {
        return this == SIDE || this == CROSS;
    }
}
