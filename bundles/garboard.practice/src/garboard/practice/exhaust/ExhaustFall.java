// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__FALL;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_EXHAUST_FALL;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.model.MakerLimits;
import garboard.physics.geometry.Fall;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;
import garboard.quantity.Slope;

/** From the injection to the muffler and from the crest to the outlet the run falls all the way: water that stands in it comes back. */
final class ExhaustFall {

    private ExhaustFall() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-FALL", ExhaustSectionRun.class)
            .among(Sections.among(Sections.FALLING), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust falls steeply enough")
            .why("Water left standing in a flat run is driven back to the elbow by the next wave, or freezes there.")
            .basis(Sources.GERR.othersSay("2, 5 and 10 deg (35, 87 and 176 mm/m) are used by others; ABYC P-1 as quoted has the same figure"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 41.7 mm/m (1/2 in/ft) from injection to muffler and from crest to outlet, or the maker's fall")
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__FALL, EXHAUST_SECTION_RUN__LENGTH)
            .uses(MAKER_LIMITS__MINIMUM_EXHAUST_FALL)
            .holds(s -> Comparison.atLeast(found(s.subject()), slope(s.subject()), limit(s)))
            .remedy("Re-hang the run so that it falls all the way", ExhaustFall::steepen)
            .build();
    }

    /** Fall over length. The length is taken for the horizontal run, which errs to the safe side where the run is steep. */
    static Slope slope(ExhaustSectionRun run) {
        return Fall.slope(run.getFall(), new Fall.Run(run.getLength()));
    }

    private static String found(ExhaustSectionRun run) {
        return Sections.inWords(run) + " falls " + Figures.both(run.getFall()) + " in " + Figures.both(run.getLength()) + ", "
            + Figures.both(slope(run));
    }

    private static Limit<Slope> limit(Situation<ExhaustSectionRun> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMinimumExhaustFall), Fall.HALF_INCH_PER_FOOT, "Gerr: 1/2 in/ft");
    }

    private static Optional<Remedy> steepen(Situation<ExhaustSectionRun> s) {
        Length drop = Rounding.up(Fall.dropFor(limit(s).value(), new Fall.Run(s.subject().getLength())), 5, "mm");
        return Optional.of(Remedy.of("Re-hang " + Sections.inWords(s.subject()) + " so that it falls " + Figures.both(drop)
            + " over its length, without a sag").setting(s.subject(), EXHAUST_SECTION_RUN__FALL, drop));
    }
}
