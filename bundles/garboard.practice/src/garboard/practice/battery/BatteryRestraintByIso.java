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
import garboard.practice.Sources;
import garboard.quantity.Length;

/** ISO 10133: pulled with twice its weight the battery moves at most 10 mm. */
final class BatteryRestraintByIso {

    private static final Length MOST = Length.of(10, "mm");

    private BatteryRestraintByIso() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-RESTRAINT-ISO", StartingBattery.class)
            .title("Battery stays in its place under twice its weight")
            .why("A battery that shifts in a seaway works its cables loose and spills acid.")
            .basis(Sources.ISO_10133_BATTERIES.othersSay("33 CFR 183.420(a): 25.4 mm (1 in) under at most 400 N (90 lbf)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("moves at most 10 mm (0.394 in) under twice its weight")
            .needs(STARTING_BATTERY__MOVEMENT_UNDER_TEST)
            .uses(STARTING_BATTERY__BLOCK_MASS)
            .holds(s -> Comparison.atMost(RestraintTest.found(s.subject(), BatteryRestraint::pullIso),
                s.subject().getMovementUnderTest(), Limit.of(MOST, "ISO 10133 clause 5")))
            .remedy("Fit straps or a clamp frame that hold the battery in every direction, and repeat the pull")
            .build();
    }
}
