// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.quantity.Length;

/** Whether an injection point stands so low that the raw-water line needs a siphon break. */
public enum SiphonBreakNeed {

    NEEDED, ADVISED, NOT_NEEDED;

    /** Heeled height below which a break is needed. Common practice; 150, 200, 230 and 300 mm are in use. */
    public static final Length HEELED_NEEDED_BELOW = Length.of(0.15);

    /** Height at rest below which a break is needed. Common practice. */
    public static final Length UPRIGHT_NEEDED_BELOW = Length.of(0.23);

    /** Height at rest below which a break is advised. Common practice. */
    public static final Length UPRIGHT_ADVISED_BELOW = Length.of(0.30);

    /** Heights of one point above the water, at rest and at its lowest in the design attitudes. */
    public record Heights(Length upright, Length lowest) {

        public static Heights upright(Length height) {
            return new Heights(height, height);
        }

        public Heights lowest(Length height) {
            return new Heights(upright, height);
        }
    }

    /** By the customary heights. */
    public static SiphonBreakNeed of(Heights injection) {
        if (injection.lowest().isLessThan(HEELED_NEEDED_BELOW) || injection.upright().isLessThan(UPRIGHT_NEEDED_BELOW)) {
            return NEEDED;
        }
        return injection.upright().isLessThan(UPRIGHT_ADVISED_BELOW) ? ADVISED : NOT_NEEDED;
    }

    /** By one height at rest, such as the set maker's: needed below, else not. */
    public static SiphonBreakNeed of(Heights injection, Length neededBelow) {
        return injection.upright().isLessThan(neededBelow) ? NEEDED : NOT_NEEDED;
    }
}
