// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.ReactivePower;

/**
 * One line of a load list ({@link AcSources#DEMAND_SUM}).
 *
 * @param input power taken from the mains at full output
 * @param powerFactor more than 0, at most 1; lagging
 * @param useFactor share of it that counts in the condition looked at, 0 to 1
 */
public record ConnectedLoad(Power input, Ratio powerFactor, Ratio useFactor) {

    public ConnectedLoad {
        Argument.notNegative("input power", input);
        Argument.between("power factor", powerFactor, 1e-6, 1, "more than 0, at most 1");
        Argument.between("use factor", useFactor, 0, 1, "0 to 1");
    }

    /** A purely resistive load that counts in full. */
    public static ConnectedLoad of(Power input) {
        return new ConnectedLoad(input, Ratio.of(1), Ratio.of(1));
    }

    /** Input of a machine that gives a shaft power: P shaft / efficiency. */
    public static Power inputOf(Power shaft, Ratio efficiency) {
        return Power.of(Argument.notNegative("shaft power", shaft) / Argument.between("efficiency", efficiency, 0.01, 1, "1 to 100 %"));
    }

    public ConnectedLoad withPowerFactor(Ratio factor) {
        return new ConnectedLoad(input, factor, useFactor);
    }

    public ConnectedLoad withUseFactor(Ratio factor) {
        return new ConnectedLoad(input, powerFactor, factor);
    }

    /** Further factor on the use factor: load, diversity and time factors multiply. */
    public ConnectedLoad times(Ratio factor) {
        return withUseFactor(Ratio.of(useFactor.si() * Argument.between("factor", factor, 0, 1, "0 to 1")));
    }

    /** P ku. */
    public Power demand() {
        return Power.of(input.si() * useFactor.si());
    }

    /** P ku tan(acos(pf)). */
    public ReactivePower reactiveDemand() {
        return AcPower.reactive(demand(), powerFactor);
    }
}
