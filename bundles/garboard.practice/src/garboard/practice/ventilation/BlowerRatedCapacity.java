// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_RATED_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__CONNECTED_OPENING_FRACTION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NET_VOLUME;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.VolumeFlow;

/** 33 CFR Table 183.610: the blowers are rated for the volume of the compartment. */
final class BlowerRatedCapacity {

    private BlowerRatedCapacity() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-BLOWER-RATED-183-610", Ventilation.class)
            .title("Blower is rated for the compartment")
            .why("A blower too small leaves gasoline vapour in the bilge; the starter lights it.")
            .basis(Sources.cfr33Quoted("183.610(b), Table 183.610"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("net volume below 34 ft3: 50 ft3/min; to 100 ft3: 1.5 times the volume a minute; above: half the volume and 100 ft3/min")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.crankingMotorFitted())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(VENTILATION__NET_VOLUME, VENTILATION__BLOWER_RATED_FLOW)
            .uses(VENTILATION__CONNECTED_OPENING_FRACTION)
            .holds(s -> Comparison.atLeast("the blower is rated for " + Figures.in(s.subject().getBlowerRatedFlow(), "m3/min", "ft3/min")
                + ", for " + NetVolume.inWords(s.subject()), s.subject().getBlowerRatedFlow(),
                Limit.of(least(s), "33 CFR Table 183.610, Fr")))
            .remedy("Fit a larger blower or a second one that runs with it", s -> {
                VolumeFlow wanted = Rounding.up(least(s), 5, "ft3/min");
                return Optional.of(Remedy.of("Fit blowers rated for " + Figures.in(wanted, "m3/min", "ft3/min") + " together")
                    .setting(s.subject(), VENTILATION__BLOWER_RATED_FLOW, wanted));
            })
            .build();
    }

    private static VolumeFlow least(Situation<Ventilation> s) {
        return Ventilation33Cfr183.leastRatedCapacity(s.subject().getNetVolume());
    }
}
