// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

import garboard.physics.Argument;
import garboard.quantity.Ratio;

/**
 * Darcy friction factor f of pipe flow (four times the Fanning factor). White, Fluid Mechanics, ch. 6. Arguments are the Reynolds number and
 * the relative roughness, wall roughness over bore, 0 to 0.05; mixing them up runs into a range check.
 */
public final class FrictionFactor {

    private FrictionFactor() {
    }

    /** Laminar flow: f = 64 / Re, for 0 &lt; Re &lt; 2300. */
    public static Ratio laminar(Ratio reynolds) {
        Argument.positive("Reynolds number", reynolds);
        return Ratio.of(64 / Argument.between("Reynolds number", reynolds, 0, Reynolds.LAMINAR_BELOW, "between 0 and 2300"));
    }

    /**
     * Explicit turbulent formula of Swamee and Jain (1976): f = 0.25 / log10(e/3.7 + 5.74 / Re^0.9)^2, for 5000 to 1e8 and a relative roughness
     * to 0.01 (1e-6 in the original; a smooth wall is let pass, where it is still within 3 % of Colebrook). From memory.
     */
    public static Ratio swameeJain(Ratio reynolds, Ratio relativeRoughness) {
        double re = Argument.between("Reynolds number", reynolds, 5000, 1e8, "5000 to 1e8");
        double rough = Argument.between("relative roughness", relativeRoughness, 0, 0.01, "0 to 0.01");
        double log = Math.log10(rough / 3.7 + 5.74 / Math.pow(re, 0.9));
        return Ratio.of(0.25 / (log * log));
    }

    /** Colebrook (1939): 1/sqrt(f) = -2 log10(e/3.7 + 2.51 / (Re sqrt(f))), for 2300 to 1e8. Solved to the last digits. */
    public static Ratio colebrook(Ratio reynolds, Ratio relativeRoughness) {
        double re = Argument.between("Reynolds number", reynolds, Reynolds.LAMINAR_BELOW, 1e8, "2300 to 1e8");
        double rough = Argument.between("relative roughness", relativeRoughness, 0, 0.05, "0 to 0.05");
        // In x = 1/sqrt(f) the equation rises steadily, from below 0 at x = 0.1 to above 0 at x = 40.
        double x = new BracketingNthOrderBrentSolver(1e-13, 5)
            .solve(200, candidate -> candidate + 2 * Math.log10(rough / 3.7 + 2.51 * candidate / re), 0.1, 40);
        return Ratio.of(1 / (x * x));
    }

    /**
     * What {@link DarcyWeisbach} uses: laminar below Re 2300, Colebrook from there on. Between 2300 and 4000 flow may be either; the turbulent
     * value is the larger one, so a loss comes out on the safe side there.
     */
    public static Ratio of(Ratio reynolds, Ratio relativeRoughness) {
        Argument.between("relative roughness", relativeRoughness, 0, 0.05, "0 to 0.05");
        return Reynolds.regime(reynolds) == Reynolds.Regime.LAMINAR ? laminar(reynolds) : colebrook(reynolds, relativeRoughness);
    }
}
