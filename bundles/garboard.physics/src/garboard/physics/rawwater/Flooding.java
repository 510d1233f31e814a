// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.Hydrostatics;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Water through a hole below the surface, as long as the inside is not flooded: Q = Cd A sqrt(2 g h) (Torricelli). */
public final class Flooding {

    /** Figure behind the flooding rates in print. Common practice; no real hole reaches it. */
    public static final Ratio IDEAL = Ratio.of(1);

    /** Sharp-edged hole. White, Fluid Mechanics, ch. 6. */
    public static final Ratio SHARP_EDGED = Ratio.of(0.61);

    /** Short tube, such as an open seacock. White, Fluid Mechanics, ch. 6. */
    public static final Ratio SHORT_TUBE = Ratio.of(0.80);

    private Flooding() {
    }

    /** A round hole under water. */
    public record Hole(Length bore, Length depth) {
        public Hole {
            Argument.positive("bore", bore);
            Argument.notNegative("depth", depth);
        }

        public static Hole ofBore(Length bore) {
            return new Hole(bore, Length.of(0));
        }

        public Hole under(Length water) {
            return new Hole(bore, water);
        }
    }

    /** @param discharge coefficient of discharge, more than 0, to 1 */
    public static VolumeFlow flow(Hole hole, Ratio discharge) {
        double share = Argument.between("discharge coefficient", discharge, 0, 1, "0 to 1");
        return VolumeFlow.of(share * Bore.area(hole.bore()).si() * Math.sqrt(2 * Hydrostatics.GRAVITY * hole.depth().si()));
    }

    /** Time until a volume has come in. */
    public static TimeSpan timeFor(Volume volume, VolumeFlow flow) {
        return TimeSpan.of(Argument.notNegative("volume", volume) / Argument.positive("flow", flow));
    }
}
