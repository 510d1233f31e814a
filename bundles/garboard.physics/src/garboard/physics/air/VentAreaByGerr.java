// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Power;

/**
 * Rule of thumb for the vent area of an engine space, all machines together: Gerr, Boat Mechanical Systems Handbook, ch. 16. It covers what the
 * engines breathe; it gives about a tenth of what carrying the heat away by natural draught would need.
 */
public final class VentAreaByGerr {

    private VentAreaByGerr() {
    }

    /** in2 = hp / 3.3. */
    public static Area inches(Power allMachines) {
        return Area.of(Power.of(Argument.positive("power", allMachines)).in("hp") / 3.3, "in2");
    }

    /** cm2 = 2.6 kW; 1 % less than the inch form. */
    public static Area metric(Power allMachines) {
        return Area.of(2.6 * Power.of(Argument.positive("power", allMachines)).in("kW"), "cm2");
    }

    /** 20 % more where ducts are tortuous. */
    public static Area forTortuousDucts(Area rule) {
        return Area.of(1.2 * Argument.positive("area", rule));
    }
}
