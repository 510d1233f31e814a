// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START;
import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_RATED_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__GROSS_VOLUME;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AlarmsAndSafety;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation46Cfr182;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.TimeSpan;

/** 46 CFR 185.352: the blower runs for one change of air before a gasoline engine is started. */
final class BlowBeforeStartOfPassengerVessel {

    private BlowBeforeStartOfPassengerVessel() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("VENT-BLOWER-TIME-185-352", AlarmsAndSafety.class)
            .title("Blower changes the air before the start (small passenger vessels)")
            .why("Vapour that is still in the compartment is lit by the starter.")
            .basis(Sources.cfr46("185.352").othersSay("the label of 33 CFR 183.610(f) says 4 min whatever the volume"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least one change of air: volume of the space over the flow of the blower")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(ALARMS_AND_SAFETY__VAPOUR_BEFORE_START, VENTILATION__GROSS_VOLUME, VENTILATION__BLOWER_RATED_FLOW)
            .holds(s -> Comparison.atLeast(BlowBeforeStart.inWords(s.subject()), s.subject().getVapourBeforeStart(),
                Limit.of(least(s), "46 CFR 185.352: one change of air")))
            .remedy("Run the blower longer before each start", s -> {
                TimeSpan longer = Rounding.up(least(s), 10, "s");
                return Optional.of(Remedy.of("Run the blower for " + Figures.both(longer) + " before each start")
                    .setting(s.subject(), ALARMS_AND_SAFETY__VAPOUR_BEFORE_START, longer));
            })
            .build();
    }

    private static TimeSpan least(Situation<AlarmsAndSafety> s) {
        Ventilation ventilation = s.record().getVentilation();
        return Ventilation46Cfr182.blowBeforeStart(ventilation.getGrossVolume(), ventilation.getBlowerRatedFlow());
    }
}
