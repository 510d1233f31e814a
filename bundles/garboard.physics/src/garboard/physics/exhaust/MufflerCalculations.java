// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import java.util.List;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Muffler, separator and cranking as named calculations. */
final class MufflerCalculations {

    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "bore of the hose that slopes back");
    private static final Parameter<Length> LENGTH = Parameter.of("length", Length.class, "length of hose that slopes back to the muffler");
    private static final Parameter<Volume> USABLE = Parameter.of("usable-volume", Volume.class, "volume of the muffler up to its inlet");
    private static final Parameter<Volume> DRAINING = Parameter.of("draining-volume", Volume.class, "what runs back when the set stops");
    private static final Parameter<Ratio> RESIDUE =
        Parameter.of("residue", Ratio.class, "part of the usable volume that stays in while running, 20 to 35 %").orElse("25 %");
    private static final Parameter<Ratio> LIMIT = Parameter.of("limit", Ratio.class, "fullest the muffler should get").orElse("80 %");
    private static final Parameter<VolumeFlow> RATED_FLOW = Parameter.of("rated-flow", VolumeFlow.class, "raw-water flow at rated speed");
    private static final Parameter<RotationalSpeed> RATED_SPEED = Parameter.of("rated-speed", RotationalSpeed.class, "rated speed of the set");
    private static final Parameter<RotationalSpeed> CRANKING_SPEED =
        Parameter.of("cranking-speed", RotationalSpeed.class, "speed while cranking").orElse("250 r/min");
    private static final Parameter<PressureDifference> GAS_SIDE =
        Parameter.of("gas-side-pressure", PressureDifference.class, "pressure in the separator");
    private static final Parameter<Length> MARGIN = Parameter.of("margin", Length.class, "what has to be left").orElse("150 mm");

    private static final Source PUMP = Source.derived("flow of a positive displacement pump goes with its speed")
        .noting("half the time and 30 s are common practice; 45 and 60 s are printed too");

    private MufflerCalculations() {
    }

    static List<Calculation> all() {
        return List.of(drainBack(), filling(), leastMuffler(), mostDraining(), flood(), leastFree(), separatorHeight());
    }

    private static Calculation drainBack() {
        return Calculation.named("muffler-drain-back", "Water that runs back").explained("What a hose that slopes back pours into the muffler.")
            .takes(BORE, LENGTH).by("V = pi D^2 L / 4, full bore").validFor("bore more than 0").from(Source.derived("volume of a cylinder"))
            .answers(in -> {
                Volume back = DrainBack.of(List.of(PipeRun.ofBore(in.get(BORE)).withLength(in.get(LENGTH))));
                return Answer.of("runs back", back).and("muffler by the three-times rule", DrainBack.leastUsableByThreeTimesRule(back));
            });
    }

    private static Calculation filling() {
        return Calculation.named("muffler-filling", "How full a muffler gets").explained("Whether a muffler holds what runs back into it.")
            .takes(USABLE, DRAINING, RESIDUE).by("draining / usable + residue").validFor("residue 0 to less than 1")
            .from(Source.derived("volumes").noting("residue and the limit of 80 % are common practice"))
            .answers(in -> {
                DrainBack muffler = muffler(in).withResidue(in.get(RESIDUE));
                return Answer.of("filling", muffler.filling(), "%").and("free after a stop", muffler.freeAfterStop())
                    .and("least by the three-times rule", DrainBack.leastUsableByThreeTimesRule(in.get(DRAINING)))
                    .warningIf(muffler.filling().isMoreThan(DrainBack.USUAL_LIMIT), "More than 80 %.")
                    .warningIf(muffler.filling().si() > 1, "It runs over towards the engine.");
            });
    }

    private static Calculation leastMuffler() {
        return Calculation.named("muffler-least-volume", "Least volume of a muffler").explained("The usable volume that holds what runs back.")
            .takes(DRAINING, RESIDUE, LIMIT).by("draining / (limit - residue); stricter rule: 3 x draining").validFor("limit more than the residue")
            .from(Source.commonPractice())
            .answers(in -> Answer.of("usable volume", DrainBack.into(Volume.of(1)).from(in.get(DRAINING)).withResidue(in.get(RESIDUE))
                .leastUsable(in.get(LIMIT))).and("by the three-times rule", DrainBack.leastUsableByThreeTimesRule(in.get(DRAINING))));
    }

    private static Calculation mostDraining() {
        return Calculation.named("muffler-most-draining", "Most that may run back").explained("What a muffler can take when the set stops.")
            .takes(USABLE, RESIDUE, LIMIT).by("usable x (limit - residue)").validFor("limit more than the residue").from(Source.commonPractice())
            .answers(in -> Answer.of("may run back",
                DrainBack.into(in.get(USABLE)).withResidue(in.get(RESIDUE)).greatestDraining(in.get(LIMIT))));
    }

    private static Calculation flood() {
        Parameter<Volume> free = Parameter.of("free-volume", Volume.class, "empty volume of the muffler below its inlet");
        return Calculation.named("cranking-flood-time", "Cranking until the muffler is full")
            .explained("How long a set may be cranked with the seacock open.").takes(free, RATED_FLOW, RATED_SPEED, CRANKING_SPEED)
            .by("t = V / (Q n_crank / n_rated); total: half of it, 30 s at most").validFor("cranking no faster than rated speed").from(PUMP)
            .answers(in -> {
                TimeSpan flooded = CrankingFlood.timeToFlood(in.get(free), cranking(in));
                return Answer.of("time to flood", flooded, "s").and("greatest total cranking", CrankingFlood.greatestTotal(flooded), "s")
                    .and("flow while cranking", cranking(in));
            });
    }

    private static Calculation leastFree() {
        Parameter<TimeSpan> total = Parameter.of("total-time", TimeSpan.class, "cranking wanted in total").orElse("30 s");
        return Calculation.named("cranking-least-free-volume", "Free volume for a cranking time")
            .explained("The empty volume a muffler needs for so much cranking.").takes(total, RATED_FLOW, RATED_SPEED, CRANKING_SPEED)
            .by("V = 2 t Q n_crank / n_rated").validFor("cranking no faster than rated speed").from(PUMP)
            .answers(in -> Answer.of("free volume", CrankingFlood.leastFree(in.get(total), cranking(in))));
    }

    private static Calculation separatorHeight() {
        return Calculation.named("separator-height", "Height of a gas and water separator")
            .explained("How high above the inclined waterline the base has to stand for its drain to run.").takes(GAS_SIDE, MARGIN)
            .by("h = p / (rho g) + margin, rho = 1025 kg/m3").validFor("pressure 0 or more")
            .from(Source.derived("hydrostatics").noting("the margin of 150 mm is common practice"))
            .answers(in -> Answer.of("height", SeparatorHeight.least(in.get(GAS_SIDE), in.get(MARGIN), SeaWater.CUSTOMARY_DENSITY)));
    }

    private static DrainBack muffler(Inputs in) {
        return DrainBack.into(in.get(USABLE)).from(in.get(DRAINING));
    }

    private static VolumeFlow cranking(Inputs in) {
        return CrankingFlood.flow(new CrankingFlood.PumpRating(in.get(RATED_FLOW), in.get(RATED_SPEED)), in.get(CRANKING_SPEED));
    }
}
