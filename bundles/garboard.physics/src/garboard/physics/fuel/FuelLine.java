// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.DarcyWeisbach;
import garboard.physics.pipe.Fluid;
import garboard.physics.pipe.Hydrostatics;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.PressureBudget;
import garboard.physics.pipe.Reynolds;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

/** Pressure in a fuel line. */
public final class FuelLine {

    /** Loss at pump flow with cold fuel that a line should keep to. Common practice. */
    public static final PressureDifference USUAL_GREATEST_DROP = PressureDifference.of(3000);

    private FuelLine() {
    }

    /**
     * Drop of a laminar flow: 128 mu L Q / (pi D^4) (Hagen and Poiseuille; White, Fluid Mechanics, eq. 6.12).
     *
     * @throws OutOfRangeException from Re 2300 on
     */
    public static PressureDifference laminarDrop(PipeRun run, VolumeFlow flow, Fluid fuel) {
        var reynolds = Reynolds.number(Bore.velocity(flow, run.bore()), run.bore(), fuel.viscosity());
        if (Reynolds.regime(reynolds) != Reynolds.Regime.LAMINAR) {
            throw OutOfRangeException.of("Reynolds number", reynolds, "less than 2300, where flow is laminar");
        }
        return PressureDifference.of(128 * dynamicViscosity(fuel) * run.length().si() * flow.si() / (Math.PI * Math.pow(run.bore().si(), 4)));
    }

    /** Drop of any flow, fittings counted. */
    public static PressureDifference drop(PipeRun run, VolumeFlow flow, Fluid fuel) {
        return DarcyWeisbach.loss(run, flow, fuel).total();
    }

    /** Least bore for a greatest drop at any flow. */
    public static Length leastBore(PipeRun run, VolumeFlow flow, PressureDifference most, Fluid fuel) {
        return DarcyWeisbach.leastBore(run, flow, most, fuel);
    }

    /** Pressure to lift fuel, rho g h. Also what an anti-siphon valve has to hold against a line that falls that far below the tank's top. */
    public static PressureDifference head(Density fuel, Length height) {
        Argument.notNegative("height", height);
        return Hydrostatics.pressure(fuel, height);
    }

    /**
     * Suction at the lift pump.
     *
     * @param lift from the fuel level, lowest in use, up to the pump; negative where it flows down
     * @param line drop in the line
     * @param devices loss of filter and fittings, and the opening pressure of an anti-siphon valve, each under its name
     */
    public static PressureBudget suction(Density fuel, Length lift, PressureDifference line, PressureBudget devices) {
        PressureBudget budget = PressureBudget.empty().plus("lift", Hydrostatics.pressure(fuel, lift)).plus("line", line);
        for (PressureBudget.Part device : devices.parts()) {
            budget = budget.plus(device.cause(), device.pressure());
        }
        return budget;
    }

    private static double dynamicViscosity(Fluid fluid) {
        return fluid.viscosity().si() * fluid.density().si();
    }
}
