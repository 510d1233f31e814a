// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.pipe.AirLikeGas;
import garboard.physics.pipe.EquivalentLength;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

/**
 * A part of an exhaust run with one bore and one gas temperature.
 *
 * @param bore inside diameter, more than 0
 * @param straight length of the straight parts, 0 or more
 * @param bends all bends together, as a number of bores of straight run, 0 or more
 * @param gas temperature of the gas in it
 */
public record ExhaustSection(Length bore, Length straight, Ratio bends, Temperature gas) {

    public ExhaustSection {
        Argument.positive("bore", bore);
        Argument.notNegative("straight length", straight);
        Argument.notNegative("bends", bends);
    }

    /** A section of this bore with gas of this temperature, with no length yet. */
    public static ExhaustSection of(Length bore, Temperature gas) {
        return new ExhaustSection(bore, Length.of(0), Ratio.of(0), gas);
    }

    public ExhaustSection withBore(Length other) {
        return new ExhaustSection(other, straight, bends, gas);
    }

    public ExhaustSection withStraight(Length length) {
        return new ExhaustSection(bore, length, bends, gas);
    }

    /** Adds bends as a number of bores. */
    public ExhaustSection plusBends(Ratio bores) {
        return new ExhaustSection(bore, straight, Ratio.of(bends.si() + bores.si()), gas);
    }

    /** Adds so many bends of a kind. */
    public ExhaustSection plus(int count, EquivalentLength bend) {
        return plusBends(Ratio.of(Argument.atLeastOne("count", count) * bend.inBores().si()));
    }

    /** Straight length and bends together. */
    public Length effectiveLength() {
        return Length.of(straight.si() + bends.si() * bore.si());
    }

    /** Density of the gas, as of air at 1 atm. */
    public Density density() {
        return AirLikeGas.density(gas);
    }

    /** Volume flow of a mass flow at the gas temperature of this section. */
    public VolumeFlow volumeFlow(MassFlow flow) {
        return VolumeFlow.of(Argument.notNegative("gas flow", flow) / density().si());
    }
}
