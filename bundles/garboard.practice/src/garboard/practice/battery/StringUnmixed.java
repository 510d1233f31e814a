// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_MIXED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** No string mixes kinds of battery: they charge at different voltages. */
final class StringUnmixed {

    private StringUnmixed() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-STRING-UNMIXED", StartingBattery.class)
            .title("No string mixes kinds of battery")
            .why("Flooded, AGM and gel blocks want different charging voltages: in one string one is overcharged and the other starves.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("one kind of battery in each string")
            .applies(BatteryConditions.blocksInSeries())
            .applies(Conditions.asked(STARTING_BATTERY__BLOCKS_MIXED))
            .needs(STARTING_BATTERY__BLOCKS_MIXED)
            .holds(s -> Answers.no(s.subject().getBlocksMixed(), "the string is of one kind", "the string mixes kinds of battery"))
            .remedy("Replace the odd block by one of the same kind as the others")
            .build();
    }
}
