// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__AREA;
import static garboard.model.GarboardPackage.Literals.VENTILATION__CONNECTED_OPENING_FRACTION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NET_VOLUME;

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
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** What supply and exhaust of natural ventilation have in common: enough area together for the volume. */
final class NaturalArea {

    private NaturalArea() {
    }

    static Check<Ventilation> check(String id, DuctFunction function, String direction) {
        return Check.check(id, Ventilation.class)
            .title("Natural " + direction + " has enough area for the compartment")
            .why("Natural ventilation carries off the vapour that collects while the boat lies unattended.")
            .basis(Sources.cfr33("183.630(d)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("5 ln(V/5) in2 in all, V the net volume in ft3; never less than 3 in2")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(path(VENTILATION__NET_VOLUME), Ducts.paths(function).then(AIR_DUCT__AREA))
            .uses(Ducts.function(), path(VENTILATION__CONNECTED_OPENING_FRACTION))
            .holds(s -> {
                Area total = Ducts.total(Ducts.of(s.subject(), function));
                return Comparison.atLeast("natural " + direction + " has " + Figures.both(total) + ", for "
                    + NetVolume.inWords(s.subject()), total, Limit.of(least(s), "33 CFR 183.630(d)"));
            })
            .remedy("Enlarge the ducts or add another", s -> remedy(s, function, direction))
            .build();
    }

    /** Brings the first duct up to what is lacking. */
    private static Optional<Remedy> remedy(Situation<Ventilation> s, DuctFunction function, String direction) {
        List<AirDuct> ducts = Ducts.of(s.subject(), function);
        AirDuct first = ducts.getFirst();
        Area wanted = Rounding.up(Area.of(first.getArea().si() + least(s).si() - Ducts.total(ducts).si()), 0.1, "in2");
        return Optional.of(Remedy.of("Natural " + direction + " has to be " + Figures.both(least(s)) + " in all: enlarge "
            + Ducts.name(first) + " to " + Figures.both(wanted) + ", or add another").setting(first, AIR_DUCT__AREA, wanted));
    }

    private static Area least(Situation<Ventilation> s) {
        return Ventilation33Cfr183.leastNaturalArea(s.subject().getNetVolume());
    }
}
