// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** Below 8 V the contacts of starter and solenoid chatter and burn. */
final class CrankingKeepsContactsWhole {

    private static final Voltage BLOCK = Voltage.of(8.0, "V");

    private CrankingKeepsContactsWhole() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CRANKING-COLLAPSE", StartingBattery.class)
            .title("Voltage does not break down under the starter")
            .why("With less than two thirds of its voltage the solenoid chatters and welds or burns its contacts.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 8.0 V at the posts for each 12 V block")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS)
            .needs(Bank.size())
            .holds(s -> Comparison.atLeast("the posts hold " + Figures.both(s.subject().getCrankingVoltageAtPosts()) + " while cranking",
                s.subject().getCrankingVoltageAtPosts(), Limit.of(Bank.ofBlock(s.subject(), BLOCK), "common practice")))
            .remedy("Stop cranking; charge and test the battery, and look at the starter's contacts before the next try")
            .build();
    }
}
