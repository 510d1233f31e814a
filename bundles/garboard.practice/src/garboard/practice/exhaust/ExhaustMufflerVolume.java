// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SECTIONS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME;
import static garboard.model.GarboardPackage.Literals.MUFFLER__VOLUME_TO_INLET;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.ExhaustRun;
import garboard.model.MakerLimits;
import garboard.physics.exhaust.DrainBack;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Rounding;
import garboard.quantity.Volume;

/** The muffler is generous: three times what drains back into it, or what the maker asks for. */
final class ExhaustMufflerVolume {

    private ExhaustMufflerVolume() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-MUFFLER-VOLUME", ExhaustRun.class)
            .title("Muffler holds three times what drains back")
            .why("A generous muffler forgives some cranking, some heel and some rain in the outlet on top of a normal stop.")
            .basis(Basis.commonPractice().othersSay("others ask only that all that drains back has room in it"))
            .gravity(Gravity.ADVICE)
            .limit("volume below the inlet at least three times that of all back-sloping hose, or the maker's volume")
            .applies(ExhaustConditions.liftMuffler())
            .applies(SteppingBack.where(ExhaustDrainBack.check()))
            .needs(MUFFLER__VOLUME_TO_INLET)
            .uses(MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME)
            .needsWhen(s -> maker(s).isEmpty(), path(EXHAUST_RUN__SECTIONS, EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER))
            .needsWhen(s -> maker(s).isEmpty() && MufflerFilling.anyDrainsBack(s.subject()), MufflerFilling.inputsOfWhatDrainsBack())
            .holds(s -> Comparison.atLeast("the muffler holds " + Figures.both(volume(s)) + " below its inlet", volume(s), limit(s)))
            .remedy("Fit a larger muffler", ExhaustMufflerVolume::enlarge)
            .build();
    }

    private static Volume volume(Situation<ExhaustRun> s) {
        return s.subject().getMuffler().getVolumeToInlet();
    }

    private static Optional<Volume> maker(Situation<ExhaustRun> s) {
        return s.maker(MakerLimits::getMinimumMufflerVolume);
    }

    private static Limit<Volume> limit(Situation<ExhaustRun> s) {
        return MakersLimit.or(maker(s), () -> Limit.of(DrainBack.leastUsableByThreeTimesRule(MufflerFilling.draining(s.subject())),
            "common practice: three times what drains back"));
    }

    private static Optional<Remedy> enlarge(Situation<ExhaustRun> s) {
        Volume enough = Rounding.up(limit(s).value(), 0.1, "L");
        return Optional.of(Remedy.of("Fit a muffler that holds " + Figures.both(enough) + " below its inlet")
            .setting(s.subject().getMuffler(), MUFFLER__VOLUME_TO_INLET, enough));
    }
}
