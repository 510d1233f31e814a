// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

/** How sure we are of the text behind a formula, figure or table. */
public enum Status {
    /** The text itself was read. */
    RETRIEVED("text read"),
    /** Read where a third party quotes it. */
    QUOTED("quoted by a third party"),
    /** Known, but not read again for this project. */
    FROM_MEMORY("from memory"),
    /** What the trade does; nobody in particular stands behind it. */
    COMMON_PRACTICE("common practice"),
    /** Follows from physics or geometry; worked out here. */
    DERIVED("derived here");

    private final String label;

    Status(String label) {
        this.label = label;
    }

    /** Wording for a reader. */
    public String label() {
        return label;
    }
}
