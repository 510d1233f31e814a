// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_EXHAUST_BORE;
import static garboard.model.GarboardPackage.Literals.MUFFLER__INLET_BORE;
import static garboard.model.GarboardPackage.Literals.MUFFLER__OUTLET_BORE;
import static garboard.model.GarboardPackage.Literals.RISER__ELBOW_BORE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.MakerLimits;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.quantity.Length;

/** No part of the wet run is narrower than the ports that it joins. */
final class ExhaustBoreOfPorts {

    private ExhaustBoreOfPorts() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-BORE-PORTS", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust is nowhere narrower than its ports")
            .why("Loss grows with the fifth power of a smaller bore: one reducer can undo a generous run.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at least the bore of elbow and muffler inlet before the muffler, of the muffler outlet behind it, or the maker's least bore")
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__BORE)
            .uses(MAKER_LIMITS__MINIMUM_EXHAUST_BORE)
            .needsWhen(s -> maker(s).isEmpty() && beforeMuffler(s), path(RISER__ELBOW_BORE), path(MUFFLER__INLET_BORE))
            .needsWhen(s -> maker(s).isEmpty() && !beforeMuffler(s), path(MUFFLER__OUTLET_BORE))
            .holds(s -> Comparison.atLeast(Sections.inWords(s.subject()) + " has a bore of " + Figures.both(s.subject().getBore()),
                s.subject().getBore(), limit(s)))
            .remedy("Fit hose of the bore of the port", ExhaustBoreOfPorts::widen)
            .build();
    }

    private static boolean beforeMuffler(Situation<ExhaustSectionRun> s) {
        return s.subject().getSection() == ExhaustSection.INJECTION_TO_MUFFLER;
    }

    private static Optional<Length> maker(Situation<ExhaustSectionRun> s) {
        return s.maker(MakerLimits::getMinimumExhaustBore);
    }

    private static Limit<Length> limit(Situation<ExhaustSectionRun> s) {
        return MakersLimit.or(maker(s), () -> {
            ExhaustRun exhaust = s.record().getExhaust();
            if (!beforeMuffler(s)) {
                return Limit.of(exhaust.getMuffler().getOutletBore(), "bore of the muffler's outlet");
            }
            Length elbow = exhaust.getRiser().getElbowBore();
            Length inlet = exhaust.getMuffler().getInletBore();
            return elbow.isLessThan(inlet) ? Limit.of(inlet, "bore of the muffler's inlet") : Limit.of(elbow, "bore of the elbow");
        });
    }

    private static Optional<Remedy> widen(Situation<ExhaustSectionRun> s) {
        Length least = limit(s).value();
        return HoseSize.atLeast(least).map(size -> {
            // Sizes are forgiven a hundredth of a millimetre; the verdict forgives none.
            Length bore = size.bore().isLessThan(least) ? least : size.bore();
            return Remedy.of("Fit hose of " + size.name() + " (" + Figures.metric(bore) + ") bore for " + Sections.inWords(s.subject()))
                .setting(s.subject(), EXHAUST_SECTION_RUN__BORE, bore);
        });
    }
}
