// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.Speed;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Continuity in a round bore: Q = v pi D^2 / 4. */
public final class Bore {

    private Bore() {
    }

    public static Area area(Length bore) {
        return Area.of(areaM2(bore));
    }

    /** Bore of a round opening with this area. */
    public static Length ofArea(Area area) {
        return Length.of(Math.sqrt(4 / Math.PI * Argument.positive("area", area)));
    }

    /** Mean velocity of a flow, 0 or more. */
    public static Speed velocity(VolumeFlow flow, Length bore) {
        return Speed.of(Argument.notNegative("flow", flow) / areaM2(bore));
    }

    public static VolumeFlow flow(Speed velocity, Length bore) {
        return VolumeFlow.of(Argument.notNegative("velocity", velocity) * areaM2(bore));
    }

    /** Bore in which a flow has this velocity: the least one for a greatest velocity. */
    public static Length forVelocity(VolumeFlow flow, Speed velocity) {
        return Length.of(Math.sqrt(4 / Math.PI * Argument.positive("flow", flow) / Argument.positive("velocity", velocity)));
    }

    /** What a length of the bore holds when full. */
    public static Volume content(PipeRun run) {
        return Volume.of(areaM2(run.bore()) * run.length().si());
    }

    private static double areaM2(Length bore) {
        double boreM = Argument.positive("bore", bore);
        return Math.PI / 4 * boreM * boreM;
    }
}
