// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;

/**
 * What a flow loses in a run of pipe.
 *
 * @param velocity mean velocity
 * @param reynolds Reynolds number
 * @param frictionFactor Darcy friction factor; 0 where nothing flows
 * @param friction loss along the wall
 * @param minor loss in the fittings
 * @param fluid what flows
 */
public record PipeLoss(Speed velocity, Ratio reynolds, Ratio frictionFactor, PressureDifference friction, PressureDifference minor,
    Fluid fluid) {

    public PressureDifference total() {
        return PressureDifference.of(friction.si() + minor.si());
    }

    /** Total loss as a column of the fluid. */
    public Length head() {
        return Hydrostatics.height(fluid.density(), total());
    }

    public Length frictionHead() {
        return Hydrostatics.height(fluid.density(), friction);
    }

    public Length minorHead() {
        return Hydrostatics.height(fluid.density(), minor);
    }

    public Reynolds.Regime regime() {
        return Reynolds.regime(reynolds);
    }
}
