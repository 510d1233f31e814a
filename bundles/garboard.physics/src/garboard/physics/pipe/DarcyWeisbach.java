// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BisectionSolver;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

/**
 * Loss of a steady flow in a run of round bore: dp = (f L/D + sum K) rho v^2 / 2 (Darcy and Weisbach; White, Fluid Mechanics, eqs. 6.10 and
 * 6.79). The friction factor is that of {@link FrictionFactor#of}. Incompressible; for gas as long as the loss is a small part of the pressure.
 */
public final class DarcyWeisbach {

    private static final double LEAST_BORE_M = 0.001;
    private static final double GREATEST_BORE_M = 2;
    private static final double GREATEST_VELOCITY_M_S = 100;

    private DarcyWeisbach() {
    }

    /** Loss of a flow, 0 or more. */
    public static PipeLoss loss(PipeRun run, VolumeFlow flow, Fluid fluid) {
        var velocity = Bore.velocity(flow, run.bore());
        var reynolds = Reynolds.number(velocity, run.bore(), fluid.viscosity());
        var factor = reynolds.si() == 0 ? reynolds : FrictionFactor.of(reynolds, run.relativeRoughness());
        double dynamicPa = fluid.density().si() * velocity.si() * velocity.si() / 2;
        var friction = PressureDifference.of(factor.si() * run.length().si() / run.bore().si() * dynamicPa);
        return new PipeLoss(velocity, reynolds, factor, friction, PressureDifference.of(run.minorLoss().si() * dynamicPa), fluid);
    }

    /**
     * Flow that loses this pressure: White's problem of the second kind. Where laminar turns into turbulent flow the loss jumps; a loss inside
     * the jump is answered with the flow at Re 2300.
     *
     * @param lost more than 0
     * @throws OutOfRangeException for a loss that 100 m/s would not use up
     */
    public static VolumeFlow flowFor(PipeRun run, PressureDifference lost, Fluid fluid) {
        double wantedPa = Argument.positive("pressure loss", lost);
        UnivariateFunction excess = velocity -> loss(run, VolumeFlow.of(velocity * Bore.area(run.bore()).si()), fluid).total().si() - wantedPa;
        // Beyond Re 1e8 there is no friction factor.
        double fastest = Math.min(GREATEST_VELOCITY_M_S, 0.999e8 * fluid.viscosity().si() / run.bore().si());
        if (excess.value(fastest) < 0) {
            throw OutOfRangeException.of("pressure loss", lost, "one that a flow of less than 100 m/s and Re 1e8 loses in the run");
        }
        double velocity = new BisectionSolver(1e-14, 1e-12).solve(500, excess, 0, fastest);
        return VolumeFlow.of(velocity * Bore.area(run.bore()).si());
    }

    /** Flow that loses this head of the fluid itself. */
    public static VolumeFlow flowFor(PipeRun run, Length head, Fluid fluid) {
        return flowFor(run, Hydrostatics.pressure(fluid.density(), head), fluid);
    }

    /**
     * Least bore, of all else as in the run, in which the flow loses no more than this. Never less than 1 mm or 20 times the roughness.
     *
     * @param run its bore counts for nothing
     * @param flow more than 0
     * @param most more than 0
     * @throws OutOfRangeException where even 2 m is too narrow
     */
    public static Length leastBore(PipeRun run, VolumeFlow flow, PressureDifference most, Fluid fluid) {
        Argument.positive("flow", flow);
        double wantedPa = Argument.positive("pressure loss", most);
        UnivariateFunction excess = bore -> loss(run.withBore(Length.of(bore)), flow, fluid).total().si() - wantedPa;
        // Below, the friction factor leaves its range: relative roughness 0.05, Re 1e8.
        double narrowest = Math.max(Math.max(LEAST_BORE_M, 20.001 * run.roughness().si()),
            4 / Math.PI * flow.si() / (0.999e8 * fluid.viscosity().si()));
        if (excess.value(narrowest) <= 0) {
            return Length.of(narrowest);
        }
        if (excess.value(GREATEST_BORE_M) > 0) {
            throw OutOfRangeException.of("pressure loss", most, "one that a bore of 2 m keeps to");
        }
        double bore = new BisectionSolver(1e-14, 1e-9).solve(500, excess, narrowest, GREATEST_BORE_M);
        // A bisection ends on either side; the bore is to be wide enough.
        return Length.of(bore + 2e-9);
    }

    /**
     * Longest run, of all else as in the run, in which the flow loses no more than this; 0 where the fittings alone lose it.
     *
     * @param run its length counts for nothing
     * @param flow more than 0
     */
    public static Length greatestLength(PipeRun run, VolumeFlow flow, PressureDifference most, Fluid fluid) {
        Argument.positive("flow", flow);
        PipeLoss perMetre = loss(run.withLength(Length.of(1)), flow, fluid);
        return Length.of(Math.max(0, (Argument.notNegative("pressure loss", most) - perMetre.minor().si()) / perMetre.friction().si()));
    }
}
