// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.VolumeFlow;

/**
 * Water and gas in one hose. How much water hangs in it nobody can tell from paper; these are brackets.
 *
 * @param water flow of the injected water, 0 or more
 * @param gas flow of the gas at its temperature in the hose, more than 0
 */
public record TwoPhaseFlow(VolumeFlow water, VolumeFlow gas) {

    /** A wet hose loses about twice what the gas alone would. Gerr, Boat Mechanical Systems Handbook; 2 to 4 in practice. */
    public static final Ratio USUAL_MULTIPLIER = Ratio.of(2);

    public TwoPhaseFlow {
        Argument.notNegative("water flow", water);
        Argument.positive("gas flow", gas);
    }

    public static TwoPhaseFlow ofGas(VolumeFlow gas) {
        return new TwoPhaseFlow(VolumeFlow.of(0), gas);
    }

    public TwoPhaseFlow withWater(VolumeFlow flow) {
        return new TwoPhaseFlow(flow, gas);
    }

    /** Part of the bore the water would fill if it ran as fast as the gas: the lower bound of the hold-up. Derived here. */
    public Ratio leastHoldUp() {
        return Ratio.of(water.si() / (water.si() + gas.si()));
    }

    /** Loss of the wet hose from that of the gas alone. @param multiplier 1 to 10 */
    public static PressureDifference wetLoss(PressureDifference gasAlone, Ratio multiplier) {
        return PressureDifference.of(Argument.notNegative("loss of the gas alone", gasAlone)
            * Argument.between("multiplier", multiplier, 1, 10, "1 to 10"));
    }
}
