// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BisectionSolver;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.pipe.AirLikeGas;
import garboard.physics.pipe.DarcyWeisbach;
import garboard.physics.pipe.PipeLoss;
import garboard.physics.pipe.PipeRun;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;

/** Loss of exhaust gas in a section of the run, and the bore that keeps to a loss. */
public final class BackPressure {

    /** Rise over the baseline that calls for a look at the run. Common practice. */
    public static final Ratio RISE_TO_ACT_ON = Ratio.of(0.25);

    private BackPressure() {
    }

    /** Loss by the {@linkplain BackPressureForm#METRIC metric form}. */
    public static PressureDifference loss(ExhaustSection section, MassFlow gas) {
        return BackPressureForm.METRIC.loss(section, section.volumeFlow(gas));
    }

    /** Loss by Darcy and Weisbach with the friction factor of this wall: for small or rough pipes, where the handy forms say too little. */
    public static PipeLoss darcy(ExhaustSection section, MassFlow gas, Length roughness) {
        PipeRun run = PipeRun.ofBore(section.bore()).withLength(section.effectiveLength()).withRoughness(roughness);
        return DarcyWeisbach.loss(run, section.volumeFlow(gas), AirLikeGas.at(section.gas()));
    }

    /**
     * Least bore, of all else as in the section, that loses no more than this by the metric form; bends count as bores, so they grow with it.
     *
     * @param section its bore counts for nothing
     * @param gas more than 0
     * @param most more than 0
     */
    public static Length leastBore(ExhaustSection section, MassFlow gas, PressureDifference most) {
        Argument.positive("gas flow", gas);
        double wantedPa = Argument.positive("most loss", most);
        UnivariateFunction excess = bore -> loss(section.withBore(Length.of(bore)), gas).si() - wantedPa;
        double widest = 2;
        if (excess.value(widest) > 0) {
            throw OutOfRangeException.of("most loss", most, "one that a bore of 2 m keeps to");
        }
        double narrowest = 0.001;
        if (excess.value(narrowest) <= 0) {
            return Length.of(narrowest);
        }
        return Length.of(new BisectionSolver(1e-14, 1e-9).solve(500, excess, narrowest, widest) + 2e-9);
    }

    /** Back pressure at which to look for what has changed: the baseline and a quarter of it. Common practice. */
    public static GaugePressure actionAt(GaugePressure baseline) {
        return GaugePressure.of(Argument.positive("baseline", baseline) * (1 + RISE_TO_ACT_ON.si()));
    }
}
