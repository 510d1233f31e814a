// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_CREST__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.RISER__DRY_CREST_INSIDE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.Riser;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** Water that fills the exhaust from either end runs out over the crest before it reaches the engine. */
final class ExhaustInherentlySafe {

    private ExhaustInherentlySafe() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-INHERENTLY-SAFE", Riser.class)
            .title("Exhaust spills overboard before it spills into the engine")
            .why("Where the crest behind the muffler is the lower one, no amount of water in the run can rise over the riser.")
            .basis(Sources.TRADE_PRESS.othersSay("hardly to be had in a sailing yacht with the set below the waterline"))
            .gravity(Gravity.ADVICE)
            .limit("dry crest of the riser higher than the crest behind the muffler")
            .applies(Conditions.motorCraft())
            .applies(SteppingBack.where(ExhaustSpillOverHeight.check()))
            .needs(path(RISER__DRY_CREST_INSIDE, POINT__Z), path(EXHAUST_CREST__INSIDE_BOTTOM, POINT__Z))
            .holds(s -> Comparison.moreThan("the riser's crest lies at " + Figures.both(riser(s)) + ", the crest behind the muffler at "
                + Figures.both(crest(s)), riser(s), Limit.of(crest(s), "height of the crest behind the muffler")))
            .remedy("Raise the elbow above the crest behind the muffler, where there is room for it")
            .build();
    }

    private static Length riser(Situation<Riser> s) {
        return s.subject().getDryCrestInside().getZ();
    }

    private static Length crest(Situation<Riser> s) {
        return s.record().getExhaust().getCrest().getInsideBottom().getZ();
    }
}
