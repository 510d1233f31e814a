// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_MEASURED_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__CONNECTED_OPENING_FRACTION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NET_VOLUME;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** 33 CFR Table 183.610: what comes out of the boat is enough for the volume of the compartment. */
final class BlowerOutput {

    private BlowerOutput() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-BLOWER-OUTPUT-183-610", Ventilation.class)
            .title("Blower delivers enough through its ducts")
            .why("Long, crushed or looped ducts take more than half of a blower's rating; only what leaves the boat counts.")
            .basis(Sources.cfr33Quoted("183.610(c), Table 183.610")
                .othersSay("33 CFR 175.201 holds operators of boats in use to the rating, not to the output"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("net volume below 34 ft3: 20 ft3/min; to 100 ft3: 0.6 times the volume a minute; above: a fifth of the volume and"
                + " 40 ft3/min; measured at the discharge with the engine stopped")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.crankingMotorFitted())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(VENTILATION__NET_VOLUME, VENTILATION__BLOWER_MEASURED_FLOW)
            .uses(VENTILATION__CONNECTED_OPENING_FRACTION)
            .holds(s -> Comparison.atLeast("the blower delivers " + Figures.in(s.subject().getBlowerMeasuredFlow(), "m3/min", "ft3/min")
                + ", for " + NetVolume.inWords(s.subject()), s.subject().getBlowerMeasuredFlow(),
                Limit.of(Ventilation33Cfr183.leastOutput(s.subject().getNetVolume()), "33 CFR Table 183.610, Fo")))
            .remedy("Shorten and straighten the ducts, enlarge them, or fit a larger blower", s -> Optional.of(Remedy.of(
                "Shorten and straighten the ducts, enlarge them, or fit a larger blower, until "
                    + Figures.in(Ventilation33Cfr183.leastOutput(s.subject().getNetVolume()), "m3/min", "ft3/min") + " leave the boat")))
            .build();
    }
}
