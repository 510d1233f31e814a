// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.pipe.Hydrostatics;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Speed;

/** Stagnation pressure at a scoop that faces forward: head V^2 / (2 g). All of it, without losses; derived here. */
public final class RamHead {

    private RamHead() {
    }

    /** @param speed through the water, 0 or more */
    public static Length at(Speed speed) {
        double metresPerSecond = Argument.notNegative("speed", speed);
        return Length.of(metresPerSecond * metresPerSecond / (2 * Hydrostatics.GRAVITY));
    }

    public static PressureDifference pressureAt(Speed speed, Density water) {
        return Hydrostatics.pressure(water, at(speed));
    }

    /** Speed at which the ram reaches a head: where it lifts water over a loop of that height. @param head 0 or more */
    public static Speed speedFor(Length head) {
        return Speed.of(Math.sqrt(2 * Hydrostatics.GRAVITY * Argument.notNegative("head", head)));
    }

    /** Speed at which the ram reaches a pressure: a pump maker's greatest inlet pressure, say. */
    public static Speed speedFor(PressureDifference pressure, Density water) {
        Argument.notNegative("pressure", pressure);
        return speedFor(Hydrostatics.height(water, pressure));
    }
}
