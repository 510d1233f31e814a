// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__AREA;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__END_FITTING_AREA;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__FLEXIBLE;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__NAME;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NET_VOLUME;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** 33 CFR 183.630(f): the end fittings of flexible ducts do not throttle them. */
final class DuctEndFittings {

    private DuctEndFittings() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-END-FITTINGS-183-630", Ventilation.class)
            .title("End fittings of flexible ducts are wide enough")
            .why("A narrow collar at the end undoes a wide duct.")
            .basis(Sources.cfr33("183.630(f)")
                .othersSay("how several ducts share the required area is not said; here in proportion to their areas"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("inside area of the fitting at least 80 % of the area required of the duct")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .applies(flexibleDucts())
            .needs(path(VENTILATION__NET_VOLUME), Ducts.naturalPaths().then(AIR_DUCT__AREA),
                Ducts.flexibleNaturalPaths().then(AIR_DUCT__END_FITTING_AREA))
            .uses(Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__NAME))
            .holds(s -> {
                AirDuct worst = flexible(s.subject()).stream()
                    .min(Comparator.comparingDouble(duct -> duct.getEndFittingArea().si() - least(s.subject(), duct).si())).orElseThrow();
                return Comparison.atLeast("the end fitting of " + Ducts.name(worst) + " is open over "
                    + Figures.both(worst.getEndFittingArea()), worst.getEndFittingArea(),
                    Limit.of(least(s.subject(), worst), "33 CFR 183.630(f)"));
            })
            .remedy("Fit wider end fittings", DuctEndFittings::widen)
            .build();
    }

    private static Optional<Remedy> widen(Situation<Ventilation> s) {
        Remedy remedy = Remedy.of("Fit end fittings with at least 80 % of the area required of the duct");
        for (AirDuct duct : flexible(s.subject())) {
            Area wanted = Rounding.up(least(s.subject(), duct), 0.1, "in2");
            if (duct.getEndFittingArea().isLessThan(wanted)) {
                remedy = remedy.setting(duct, AIR_DUCT__END_FITTING_AREA, wanted);
            }
        }
        return Optional.of(remedy);
    }

    private static Condition<EObject> flexibleDucts() {
        return Condition.when("flexible ducts of natural ventilation").known(Ducts.naturalPaths().then(AIR_DUCT__FLEXIBLE)).test(
            s -> !flexible(s.record().getVentilation()).isEmpty(), "no duct of natural ventilation is flexible");
    }

    private static List<AirDuct> flexible(Ventilation ventilation) {
        return Ducts.natural(ventilation).stream().filter(duct -> duct.getFlexible() == Answer.YES).toList();
    }

    private static Area least(Ventilation ventilation, AirDuct duct) {
        Area all = Ventilation33Cfr183.leastNaturalArea(ventilation.getNetVolume());
        double share = duct.getArea().si() / Ducts.total(Ducts.of(ventilation, duct.getFunction())).si();
        double requiredM2 = Math.max(all.si() * share, Ventilation33Cfr183.EACH_OPENING_OVER.si());
        return Ventilation33Cfr183.leastEndFitting(Area.of(requiredM2));
    }
}
