// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.pipe.Hydrostatics;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

/** Gas and water separator: the gas pressure pushes the water down its drain, so the base has to stand p / (rho g) above water, and a margin. */
public final class SeparatorHeight {

    /** Margin over the balance. Common practice. */
    public static final Length USUAL_MARGIN = Length.of(0.15);

    private SeparatorHeight() {
    }

    /**
     * Least height of the base above the inclined waterline. Derived here.
     *
     * @param gasSide pressure on the gas side, 0 or more
     * @param margin 0 or more
     */
    public static Length least(PressureDifference gasSide, Length margin, Density water) {
        Argument.notNegative("gas-side pressure", gasSide);
        return Length.of(Hydrostatics.height(water, gasSide).si() + Argument.notNegative("margin", margin));
    }

    /** Greatest gas-side pressure at which a base height still leaves the margin; 0 where the margin alone uses the height up. */
    public static PressureDifference greatestGasPressure(BaseHeight base, Length margin, Density water) {
        double left = base.aboveWater().si() - Argument.notNegative("margin", margin);
        return Hydrostatics.pressure(water, Length.of(Math.max(0, left)));
    }

    /** Height of a separator's base above the waterline. */
    public record BaseHeight(Length aboveWater) {
    }
}
