// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Density;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;
import garboard.quantity.VolumeFlow;

/**
 * A way in for air: dp = K rho v^2 / 2 over its area.
 *
 * @param loss coefficient K of the whole way, more than 0
 * @param air density, more than 0
 */
public record DuctOpening(Ratio loss, Density air) {

    /** Louvre, bend and water trap. Common practice. */
    public static final Ratio USUAL_LOSS = Ratio.of(2.5);

    public DuctOpening {
        Argument.positive("loss coefficient", loss);
        Argument.positive("air density", air);
    }

    /** Velocity that a depression draws: sqrt(2 dp / (K rho)). */
    public Speed velocity(PressureDifference depression) {
        return Speed.of(Math.sqrt(2 * Argument.notNegative("depression", depression) / (loss.si() * air.si())));
    }

    /** Flow through an area. */
    public VolumeFlow flow(Area area, PressureDifference depression) {
        return VolumeFlow.of(Argument.notNegative("area", area) * velocity(depression).si());
    }

    /** Least area that lets a flow in without more depression than this. */
    public Area leastArea(VolumeFlow flow, PressureDifference depression) {
        Argument.positive("depression", depression);
        return Area.of(Argument.notNegative("flow", flow) / velocity(depression).si());
    }

    /** Depression that a flow makes in an area. */
    public PressureDifference depression(VolumeFlow flow, Area area) {
        double velocity = Argument.notNegative("flow", flow) / Argument.positive("area", area);
        return PressureDifference.of(loss.si() * air.si() * velocity * velocity / 2);
    }
}
