// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_RATED_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__GROSS_VOLUME;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation46Cfr182;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.VolumeFlow;

/** 46 CFR 182.460(b): a space with gasoline machinery changes its air once in two to five minutes. */
final class AirChangesOfPassengerVessel {

    private AirChangesOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-AIR-CHANGES-182-460", Ventilation.class)
            .title("Gasoline space changes its air fast enough (small passenger vessels)")
            .why("Vapour that stays is lit by the next start.")
            .basis(Sources.cfr46("182.460(b)")
                .othersSay("the metric edges of the table are 14, 28.5 and 43 m3, which is not quite the same"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("one change of air in 2 min to 500 ft3, 3 min to 1000 ft3, 4 min to 1500 ft3, 5 min above;"
                + " the required flow drops at each edge")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(VENTILATION__GROSS_VOLUME, VENTILATION__BLOWER_RATED_FLOW)
            .holds(s -> Comparison.atLeast("the blower moves " + Figures.in(s.subject().getBlowerRatedFlow(), "m3/min", "ft3/min")
                + " for a space of " + Figures.in(s.subject().getGrossVolume(), "m3", "ft3"), s.subject().getBlowerRatedFlow(),
                Limit.of(least(s), "46 CFR 182.460(b), figures in ft3")))
            .remedy("Fit a larger blower", s -> {
                VolumeFlow wanted = Rounding.up(least(s), 5, "ft3/min");
                return Optional.of(Remedy.of("Fit blowers for " + Figures.in(wanted, "m3/min", "ft3/min"))
                    .setting(s.subject(), VENTILATION__BLOWER_RATED_FLOW, wanted));
            })
            .build();
    }

    private static VolumeFlow least(Situation<Ventilation> s) {
        return Ventilation46Cfr182.leastFlow(s.subject().getGrossVolume(), Ventilation46Cfr182.Figures.INCH);
    }
}
