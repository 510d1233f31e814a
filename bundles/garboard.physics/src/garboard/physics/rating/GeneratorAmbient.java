// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Argument;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/** Ambient temperature that a generator is built for, and what 46 CFR 183.320(b) leaves of its rating ({@link RatingSources#HOT_COMPARTMENT}). */
public enum GeneratorAmbient {
    DEGREES_40(313.15), DEGREES_50(323.15);

    private static final double HOTTEST_K = 323.15;
    private static final double SHARE_IN_HOTTER_SPACE = 0.80;

    private final double builtForK;

    GeneratorAmbient(double builtForK) {
        this.builtForK = builtForK;
    }

    /**
     * Share of full load: all of it up to the ambient temperature it is built for, else 80 %. Nothing between counts: 41 degC is treated as 50.
     * Throws above 50 degC, which is outside the rule.
     */
    public Ratio shareIn(Temperature hottestSpace) {
        double spaceK = Argument.between("hottest temperature of the space", hottestSpace, 200, HOTTEST_K, "at most 50 degC");
        return Ratio.of(spaceK <= builtForK + 1e-9 ? 1 : SHARE_IN_HOTTER_SPACE);
    }
}
