// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_MASS;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__MOVEMENT_UNDER_TEST;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.physics.battery.BatteryRestraint;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.420(a): pulled with 90 lbf or twice its weight, whichever is less, the battery moves at most 1 in. */
final class BatteryRestraintByLaw {

    private static final Length MOST = Length.of(1, "in");

    private BatteryRestraintByLaw() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-RESTRAINT-33CFR", StartingBattery.class)
            .title("Battery stays in its place under the pull of the rule (gasoline boats)")
            .why("A battery that shifts tears its cables off and sparks where gasoline vapour may lie.")
            .basis(Sources.cfr33("183.420(a)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("moves at most 25.4 mm (1 in) in any direction under 400 N (90 lbf) or twice its weight, whichever is less, for 1 min")
            .applies(Conditions.boatWithGasolineEngine())
            .needs(STARTING_BATTERY__MOVEMENT_UNDER_TEST)
            .uses(STARTING_BATTERY__BLOCK_MASS)
            .holds(s -> Comparison.atMost(RestraintTest.found(s.subject(), BatteryRestraint::pull33Cfr183),
                s.subject().getMovementUnderTest(), Limit.of(MOST, "33 CFR 183.420(a)")))
            .remedy("Fit straps or a clamp frame that hold the battery in every direction, and repeat the pull")
            .build();
    }
}
