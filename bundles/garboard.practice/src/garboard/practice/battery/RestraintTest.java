// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import java.util.function.Function;

import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Force;
import garboard.quantity.Mass;

/** The pull on a battery and what came of it, in words. */
final class RestraintTest {

    private RestraintTest() {
    }

    /** Names the pull that the rule asks for where the battery's mass is known. */
    static String found(StartingBattery battery, Function<Mass, Force> pull) {
        String moved = "the battery moved " + Figures.both(battery.getMovementUnderTest());
        return battery.getBlockMass() == null ? moved
            : moved + "; the pull for a block of " + Figures.both(battery.getBlockMass()) + " is " + Figures.both(pull.apply(battery.getBlockMass()));
    }
}
