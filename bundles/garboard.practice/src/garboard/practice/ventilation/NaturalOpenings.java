// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__AREA;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__NAME;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;

import java.util.Comparator;
import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AirDuct;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** 33 CFR 183.630(e): each single opening of natural ventilation is larger than 3 in2. */
final class NaturalOpenings {

    private NaturalOpenings() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-NATURAL-OPENINGS-183-630", Ventilation.class)
            .title("Each opening of natural ventilation is large enough")
            .why("Air hardly moves through a small opening, however many of them there are.")
            .basis(Sources.cfr33("183.630(e)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("each opening and duct more than 3.0 in2 (19.4 cm2)")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(Ducts.naturalPaths().then(AIR_DUCT__AREA))
            .uses(Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__NAME))
            .holds(s -> {
                AirDuct smallest = Ducts.natural(s.subject()).stream().min(Comparator.comparing(AirDuct::getArea)).orElseThrow();
                return Comparison.moreThan(Ducts.name(smallest) + " is open over " + Figures.both(smallest.getArea()), smallest.getArea(),
                    Limit.of(Ventilation33Cfr183.EACH_OPENING_OVER, "33 CFR 183.630(e)"));
            })
            .remedy("Enlarge each opening beyond 3 in2", NaturalOpenings::enlarge)
            .build();
    }

    private static Optional<Remedy> enlarge(Situation<Ventilation> s) {
        Area wanted = Area.of(3.1, "in2");
        Remedy remedy = Remedy.of("Enlarge each opening to at least " + Figures.both(wanted));
        for (AirDuct duct : Ducts.natural(s.subject())) {
            if (duct.getArea().isLessThan(wanted)) {
                remedy = remedy.setting(duct, AIR_DUCT__AREA, wanted);
            }
        }
        return Optional.of(remedy);
    }
}
