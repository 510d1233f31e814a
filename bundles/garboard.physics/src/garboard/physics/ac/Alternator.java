// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Ratio;

/**
 * An alternator that a load is switched on to, as a source behind a reactance ({@link AcSources#STARTING_DIP}). For the settled dip
 * take the transient reactance, for the first cycle the subtransient one.
 *
 * @param rated rated apparent power
 * @param reactance per unit of its own rating, 0.02 to 1
 */
public record Alternator(ApparentPower rated, Ratio reactance) {

    public Alternator {
        Argument.positive("rated apparent power", rated);
        Argument.between("reactance", reactance, 0.02, 1, "0.02 to 1 per unit");
    }

    /** z / (1 + z), z = X S start / S rated. */
    public Ratio dipStarting(ApparentPower starting) {
        double z = reactance.si() * Argument.notNegative("starting apparent power", starting) / rated.si();
        return Ratio.of(z / (1 + z));
    }

    /** The start that just gives a dip: S rated d / (X (1 - d)), the inverse of {@link #dipStarting}. */
    public ApparentPower largestStart(Ratio allowedDip) {
        double dip = dip(allowedDip);
        return ApparentPower.of(rated.si() * dip / (reactance.si() * (1 - dip)));
    }

    /** The least rating, at the same reactance, that starts a load within a dip: X S start (1 - d) / d. */
    public ApparentPower leastRating(ApparentPower starting, Ratio allowedDip) {
        double dip = dip(allowedDip);
        return ApparentPower.of(reactance.si() * Argument.positive("starting apparent power", starting) * (1 - dip) / dip);
    }

    private static double dip(Ratio allowedDip) {
        return Argument.between("allowed dip", allowedDip, 1e-6, 0.9, "more than 0, at most 90 %");
    }
}
