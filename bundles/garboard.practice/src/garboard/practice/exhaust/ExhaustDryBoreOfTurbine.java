// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The dry part of a turbocharged set is nowhere narrower than the outlet of its turbine. */
final class ExhaustDryBoreOfTurbine {

    private ExhaustDryBoreOfTurbine() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-DRY-BORE-TURBINE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.DRY), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Dry exhaust is nowhere narrower than the turbine's outlet")
            .why("A turbine answers back pressure with heat: it loses boost, and the exhaust valves burn.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at least the bore of the turbine's outlet")
            .applies(ExhaustConditions.turbocharged())
            .needs(path(EXHAUST_SECTION_RUN__SECTION), path(EXHAUST_SECTION_RUN__BORE), path(EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE))
            .holds(s -> Comparison.atLeast("the dry part has a bore of " + Figures.both(s.subject().getBore()), s.subject().getBore(),
                Limit.of(port(s), "bore of the turbine's outlet")))
            .remedy("Build the dry part in the bore of the turbine's outlet", ExhaustDryBoreOfTurbine::widen)
            .build();
    }

    private static Optional<Remedy> widen(Situation<ExhaustSectionRun> s) {
        Length wide = Rounding.up(port(s), 0.1, "mm");
        return Optional.of(Remedy.of("Build the dry part with a bore of " + Figures.both(wide) + " or more")
            .setting(s.subject(), EXHAUST_SECTION_RUN__BORE, wide));
    }

    private static Length port(Situation<ExhaustSectionRun> s) {
        return s.record().getExhaust().getTurbineOutletPortBore();
    }
}
