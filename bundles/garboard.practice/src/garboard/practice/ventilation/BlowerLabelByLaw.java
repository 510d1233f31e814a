// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_LABEL_AT_EACH_START;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.610(f): a label at each start switch tells to run the blower first. */
final class BlowerLabelByLaw {

    private BlowerLabelByLaw() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-BLOWER-LABEL-183-610", Ventilation.class)
            .title("Label at each start switch says to run the blower first")
            .why("Whoever does not know starts the set into the vapour.")
            .basis(Sources.cfr33("183.610(f)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("in plain view at each start switch, the set's own too: vapour can explode; run the blower 4 "
                + "minutes; check the bilge for vapour")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.crankingMotorFitted())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(VENTILATION__BLOWER_LABEL_AT_EACH_START)
            .holds(s -> Answers.demanded(s.subject().getBlowerLabelAtEachStart(), "the label is at each start switch",
                "the label is missing at a start switch"))
            .remedy("Fix the label at every place from which the set is started")
            .build();
    }
}
