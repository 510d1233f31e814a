// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

/**
 * Heat that a set gives to the air around it: the radiated share of the fuel's power, and the losses of an air-cooled alternator. Conservation of
 * energy; the share is the maker's or a typical one. A sound shield with a water-cooled alternator gives far less.
 */
public final class CompartmentHeat {

    private CompartmentHeat() {
    }

    /** Radiated part of the engine. @param share of the fuel's power, 0 to 1; usually 0.04 to 0.08 */
    public static Power ofEngine(Power fuel, Ratio share) {
        return Power.of(Argument.notNegative("fuel power", fuel) * Argument.between("radiated share", share, 0, 1, "0 to 1"));
    }

    /** Loss of an alternator: P (1/efficiency - 1). @param efficiency 0.3 to 1 */
    public static Power ofAlternator(Power electrical, Ratio efficiency) {
        return Power.of(Argument.notNegative("electrical power", electrical)
            * (1 / Argument.between("alternator efficiency", efficiency, 0.3, 1, "0.3 to 1") - 1));
    }

    /** Both together. */
    public static Power of(Power fuel, Ratio share, Alternator alternator) {
        return Power.of(ofEngine(fuel, share).si() + ofAlternator(alternator.output(), alternator.efficiency()).si());
    }

    /** Electrical output and efficiency of an air-cooled alternator. */
    public record Alternator(Power output, Ratio efficiency) {
    }
}
