// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/**
 * A run of hose or pipe of one bore.
 *
 * @param bore inside diameter, more than 0
 * @param length 0 or more; straight, or with the equivalent lengths of fittings where one reckons that way
 * @param roughness height of the wall's roughness, 0 (smooth) or more
 * @param minorLoss sum of the loss coefficients K of everything in the run, 0 or more
 */
public record PipeRun(Length bore, Length length, Length roughness, Ratio minorLoss) {

    public PipeRun {
        Argument.positive("bore", bore);
        Argument.notNegative("length", length);
        Argument.notNegative("roughness", roughness);
        Argument.notNegative("loss coefficient", minorLoss);
    }

    /** A run of this bore, with no length yet, smooth, without fittings. */
    public static PipeRun ofBore(Length bore) {
        return new PipeRun(bore, Length.of(0), Length.of(0), Ratio.of(0));
    }

    public PipeRun withBore(Length other) {
        return new PipeRun(other, length, roughness, minorLoss);
    }

    public PipeRun withLength(Length metres) {
        return new PipeRun(bore, metres, roughness, minorLoss);
    }

    public PipeRun withRoughness(Length height) {
        return new PipeRun(bore, length, height, minorLoss);
    }

    public PipeRun withRoughness(Wall wall) {
        return withRoughness(wall.roughness());
    }

    /** Adds a loss coefficient to those already there. */
    public PipeRun plusLoss(Ratio k) {
        return new PipeRun(bore, length, roughness, Ratio.of(minorLoss.si() + Argument.notNegative("loss coefficient", k)));
    }

    /** Adds so many fittings, each with its typical loss. */
    public PipeRun plus(int count, Fitting fitting) {
        return plusLoss(Ratio.of(Argument.atLeastOne("count", count) * fitting.loss().si()));
    }

    /** Adds so many bends as lengths of this bore. */
    public PipeRun plus(int count, EquivalentLength bend) {
        return withLength(Length.of(length.si() + Argument.atLeastOne("count", count) * bend.length(bore).si()));
    }

    /** Roughness over bore. */
    public Ratio relativeRoughness() {
        return Ratio.of(roughness.si() / bore.si());
    }
}
