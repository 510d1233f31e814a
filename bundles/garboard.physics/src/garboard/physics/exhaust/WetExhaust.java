// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import java.util.Optional;

import garboard.physics.pipe.PressureBudget;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;

/**
 * A whole wet exhaust for the reckoning of its back pressure: dry section + multiplier x wet hose + muffler + lift.
 *
 * @param dry from the manifold to the injection
 * @param wet from the injection to the outlet
 * @param multiplier what the water makes of the loss in the wet hose, 1 to 10
 * @param silencers loss of muffler and separator, from their data
 * @param lift from the bottom of the canister to the highest point
 * @param holdUp part of the riser that is water, 0 to 1
 * @param water density of the water
 */
public record WetExhaust(ExhaustSection dry, ExhaustSection wet, Ratio multiplier, PressureDifference silencers, Length lift, Ratio holdUp,
    Density water) {

    private static final String WET_HOSE = "wet hose";

    /** The dry section alone: no wet hose, silencer or lift yet; the usual multiplier, a solid column of sea water. */
    public static WetExhaust ofDry(ExhaustSection section) {
        return new WetExhaust(section, ExhaustSection.of(section.bore(), section.gas()), TwoPhaseFlow.USUAL_MULTIPLIER,
            PressureDifference.of(0), Length.of(0), Ratio.of(1), SeaWater.CUSTOMARY_DENSITY);
    }

    public WetExhaust withWet(ExhaustSection section) {
        return new WetExhaust(dry, section, multiplier, silencers, lift, holdUp, water);
    }

    public WetExhaust withMultiplier(Ratio factor) {
        return new WetExhaust(dry, wet, factor, silencers, lift, holdUp, water);
    }

    public WetExhaust withSilencers(PressureDifference loss) {
        return new WetExhaust(dry, wet, multiplier, loss, lift, holdUp, water);
    }

    public WetExhaust withLift(Length height) {
        return new WetExhaust(dry, wet, multiplier, silencers, height, holdUp, water);
    }

    public WetExhaust withHoldUp(Ratio share) {
        return new WetExhaust(dry, wet, multiplier, silencers, lift, share, water);
    }

    public WetExhaust withWetBore(Length bore) {
        return new WetExhaust(dry, wet.withBore(bore), multiplier, silencers, lift, holdUp, water);
    }

    /** What makes up the back pressure of this gas flow. */
    public PressureBudget budget(MassFlow gas) {
        return withoutLift(gas).plus("lift", LiftColumn.pressure(lift, holdUp, water));
    }

    /**
     * Greatest lift that keeps the total within a limit, or nothing where the rest passes it alone.
     *
     * @throws garboard.physics.OutOfRangeException where the hold-up is 0: then the lift costs nothing
     */
    public Optional<Length> greatestLift(MassFlow gas, PressureDifference limit) {
        PressureDifference left = withoutLift(gas).leftTo(limit);
        return left.si() < 0 ? Optional.empty() : Optional.of(LiftColumn.greatestLift(left, holdUp, water));
    }

    /** Least bore of the wet hose that keeps the total within a limit, or nothing where the rest passes it alone. */
    public Optional<Length> leastWetBore(MassFlow gas, PressureDifference limit) {
        double hosePa = budget(gas).parts().stream().filter(part -> part.cause().equals(WET_HOSE)).findFirst().orElseThrow().pressure().si();
        double leftPa = budget(gas).leftTo(limit).si() + hosePa;
        return leftPa <= 0 ? Optional.empty()
            : Optional.of(BackPressure.leastBore(wet, gas, PressureDifference.of(leftPa / multiplier.si())));
    }

    private PressureBudget withoutLift(MassFlow gas) {
        return PressureBudget.empty().plus("dry section", BackPressure.loss(dry, gas))
            .plus(WET_HOSE, TwoPhaseFlow.wetLoss(BackPressure.loss(wet, gas), multiplier)).plus("muffler", silencers);
    }
}
