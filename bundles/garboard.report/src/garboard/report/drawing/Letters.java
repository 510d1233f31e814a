// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

/**
 * Letters of one typeface.
 *
 * @param size height of the type in units of the drawing: millimetres on paper
 * @param bold whether they are heavy
 * @param anchor what a given place is to the text
 */
public record Letters(double size, boolean bold, Anchor anchor) {

    /** What a given place is to a text. */
    public enum Anchor {
        LEFT, CENTRE, RIGHT
    }

    static final double SMALL = 2.3;
    static final double USUAL = 2.7;

    static final Letters SMALL_LEFT = new Letters(SMALL, false, Anchor.LEFT);
    static final Letters SMALL_CENTRE = new Letters(SMALL, false, Anchor.CENTRE);
    static final Letters SMALL_RIGHT = new Letters(SMALL, false, Anchor.RIGHT);
    static final Letters BOLD_LEFT = new Letters(USUAL, true, Anchor.LEFT);
    static final Letters BOLD_RIGHT = new Letters(USUAL, true, Anchor.RIGHT);

    Letters bold(boolean heavy) {
        return new Letters(size, heavy, anchor);
    }

    Letters of(double otherSize) {
        return new Letters(otherSize, bold, anchor);
    }
}
