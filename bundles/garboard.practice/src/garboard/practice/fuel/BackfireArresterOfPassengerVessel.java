// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 58.10-5: a gasoline engine has a backfire flame arrester. */
final class BackfireArresterOfPassengerVessel {

    private BackfireArresterOfPassengerVessel() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-BACKFIRE-58-10-5", FuelSupply.class)
            .title("Gasoline engine has a backfire flame arrester (small passenger vessels)")
            .why("A backfire through the intake lights what vapour there is.")
            .basis(Sources.cfr46("58.10-5").othersSay("subchapter T takes it up in 182.415, from memory"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("backfire flame control on the air intake")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER)
            .holds(s -> Answers.demanded(s.subject().getBackfireFlameArrester(), "the air intake has a backfire flame arrester",
                "the air intake has no backfire flame arrester"))
            .remedy("Fit a backfire flame arrester")
            .build();
    }
}
