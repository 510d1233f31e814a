// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__FALL;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.physics.geometry.Fall;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;
import garboard.quantity.Slope;

/** Some fall is left when the boat trims against the run. */
final class ExhaustFallTrimmed {

    /** What a remedy leaves over nothing. */
    private static final Slope A_LITTLE = Slope.of(1, "mm/m");

    private ExhaustFallTrimmed() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-FALL-TRIMMED", ExhaustSectionRun.class)
            .among(Sections.among(Sections.FALLING), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust still falls when the boat trims")
            .why("A run that falls in harbour and climbs under way carries its water back to the engine for as long as the passage lasts.")
            .basis(Basis.derived("geometry: slope angle less adverse trim"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("some fall left at design trim, reckoned as if the run lay fore and aft")
            .needs(path(EXHAUST_SECTION_RUN__SECTION), path(EXHAUST_SECTION_RUN__FALL), path(EXHAUST_SECTION_RUN__LENGTH),
                path(VESSEL__DESIGN_TRIM))
            .holds(s -> Comparison.moreThan(found(s), left(s), Limit.of(Slope.of(0, "mm/m"), "level")))
            .remedy("Re-hang the run with more fall", ExhaustFallTrimmed::steepen)
            .build();
    }

    private static Slope left(Situation<ExhaustSectionRun> s) {
        return Fall.left(ExhaustFall.slope(s.subject()), s.vessel().getDesignTrim());
    }

    private static String found(Situation<ExhaustSectionRun> s) {
        Slope left = left(s);
        String run = Sections.inWords(s.subject());
        String trim = Figures.both(s.vessel().getDesignTrim()) + " of adverse trim";
        return left.si() < 0 ? run + " climbs by " + Figures.both(Slope.of(-left.si())) + " at " + trim
            : run + " keeps a fall of " + Figures.both(left) + " at " + trim;
    }

    private static Optional<Remedy> steepen(Situation<ExhaustSectionRun> s) {
        Slope slope = Fall.leastAtRest(A_LITTLE, s.vessel().getDesignTrim());
        Length drop = Rounding.up(Fall.dropFor(slope, new Fall.Run(s.subject().getLength())), 5, "mm");
        return Optional.of(Remedy.of("Re-hang " + Sections.inWords(s.subject()) + " so that it falls " + Figures.both(drop)
            + " over its length").setting(s.subject(), EXHAUST_SECTION_RUN__FALL, drop));
    }
}
