// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import java.util.Comparator;
import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.ExhaustSectionRun;
import garboard.physics.exhaust.ExhaustBore;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The wet run is wider than the dry one, because water shares it with the gas. */
final class ExhaustWetBore {

    private ExhaustWetBore() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-WET-BORE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Wet exhaust is wider than the dry one")
            .why("Water and gas together lose about twice what the gas alone would lose.")
            .basis(Sources.GERR.othersSay("a doubled loss is made good by a bore 1.15 times as wide, so 1.4 is generous practice"))
            .gravity(Gravity.ADVICE)
            .limit("about 1.4 times the bore of the dry part")
            .applies(SteppingBack.where(ExhaustBoreOfPorts.check()))
            .needs(path(EXHAUST_SECTION_RUN__SECTION), path(EXHAUST_SECTION_RUN__BORE), Sections.between(),
                Sections.in(Sections.DRY).then(EXHAUST_SECTION_RUN__BORE))
            .holds(s -> Comparison.atLeast(Sections.inWords(s.subject()) + " has a bore of " + Figures.both(s.subject().getBore())
                + ", the dry part " + Figures.both(dryBore(s)), s.subject().getBore(), Limit.of(wanted(s), "Gerr: 1.4 times the dry bore")))
            .remedy("Fit the next larger hose, or rely on the measured back pressure", ExhaustWetBore::widen)
            .build();
    }

    /** The widest, where the dry part widens. */
    private static Length dryBore(Situation<ExhaustSectionRun> s) {
        return Sections.of(s.record().getExhaust(), Sections.DRY).stream().map(ExhaustSectionRun::getBore).max(Comparator.naturalOrder())
            .orElseThrow();
    }

    private static Length wanted(Situation<ExhaustSectionRun> s) {
        return ExhaustBore.wetByGerr(dryBore(s));
    }

    private static Optional<Remedy> widen(Situation<ExhaustSectionRun> s) {
        Length least = wanted(s);
        return HoseSize.atLeast(least).map(size -> {
            Length bore = size.bore().isLessThan(least) ? least : size.bore();
            return Remedy.of("Fit hose of " + size.name() + " (" + Figures.metric(bore) + ") bore for " + Sections.inWords(s.subject())
                + ", or rely on the measured back pressure").setting(s.subject(), EXHAUST_SECTION_RUN__BORE, bore);
        });
    }
}
