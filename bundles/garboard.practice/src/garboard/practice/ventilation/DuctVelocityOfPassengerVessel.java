// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__AREA;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__NAME;
import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_RATED_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;

import java.util.List;
import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AirDuct;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation46Cfr182;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** 46 CFR 182.460(f): air moves no faster than 2000 ft/min in the exhaust ducts. */
final class DuctVelocityOfPassengerVessel {

    private DuctVelocityOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DUCT-VELOCITY-182-460", Ventilation.class)
            .title("Exhaust ducts are wide enough for the blower (small passenger vessels)")
            .why("In a duct too narrow the blower delivers a fraction of its rating.")
            .basis(Sources.cfr46FromMemory("182.460(f)")
                .othersSay("46 CFR 72.15-10(e), whose text was read, has the same; in metric 10 m/s"))
            .gravity(Gravity.DEFECT)
            .limit("free area at least blower flow over 2000 ft/min (10.16 m/s)")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(path(VENTILATION__BLOWER_RATED_FLOW), Ducts.paths(DuctFunction.BLOWER_INTAKE).then(AIR_DUCT__AREA))
            .uses(Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__NAME))
            .holds(s -> Comparison.atLeast("the ducts are open over " + Figures.both(total(s)) + " for "
                + Figures.in(s.subject().getBlowerRatedFlow(), "m3/min", "ft3/min"), total(s), Limit.of(least(s), "46 CFR 182.460(f)")))
            .remedy("Fit a wider duct", s -> {
                AirDuct first = ducts(s).getFirst();
                Area wanted = Rounding.up(Area.of(first.getArea().si() + least(s).si() - total(s).si()), 0.1, "in2");
                return Optional.of(Remedy.of("Enlarge " + Ducts.name(first) + " to " + Figures.both(wanted))
                    .setting(first, AIR_DUCT__AREA, wanted));
            })
            .build();
    }

    private static Area least(Situation<Ventilation> s) {
        return Ventilation46Cfr182.leastDuctArea(s.subject().getBlowerRatedFlow(), Ventilation46Cfr182.Figures.INCH);
    }

    private static Area total(Situation<Ventilation> s) {
        return Ducts.total(ducts(s));
    }

    private static List<AirDuct> ducts(Situation<Ventilation> s) {
        return Ducts.of(s.subject(), DuctFunction.BLOWER_INTAKE);
    }
}
