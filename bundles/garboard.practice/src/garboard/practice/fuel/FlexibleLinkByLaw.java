// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FLEXIBLE_LAST_LINK;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Answer;
import garboard.model.FuelSupply;
import garboard.practice.Sources;

/** 33 CFR 183.562: a metal line joins the engine by a flexible one, and is fastened next to the joint. */
final class FlexibleLinkByLaw {

    private FlexibleLinkByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-FLEXIBLE-LINK-183-562", FuelSupply.class)
            .title("Metal fuel line joins the engine by a hose and is fastened beside it")
            .why("A rigid line that is shaken by the engine cracks at its last fitting.")
            .basis(Sources.cfr33("183.562"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("flexible line to the engine; metal line fastened within 4 in (102 mm) of the joint")
            .applies(FuelConditions.lawForGasoline())
            .applies(FuelConditions.rigidLine())
            .needs(FUEL_SUPPLY__FLEXIBLE_LAST_LINK, FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE)
            .holds(s -> s.subject().getFlexibleLastLink() == Answer.YES ? RigidLineSupport.compare(s, "33 CFR 183.562")
                : Comparison.holds("the metal line goes to the engine without a flexible link", false))
            .remedy("Fit a flexible link and a clip beside the joint", s -> RigidLineSupport.remedy(s).map(
                remedy -> remedy.setting(s.subject(), FUEL_SUPPLY__FLEXIBLE_LAST_LINK, Answer.YES)))
            .build();
    }
}
