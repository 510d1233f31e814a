// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** A battery near empty is not to be cranked with. */
final class BatteryMayCrank {

    private static final Voltage BLOCK = Voltage.of(12.0, "V");

    private BatteryMayCrank() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CRANKABLE", StartingBattery.class)
            .title("Battery is charged enough to crank with at all")
            .why("At a quarter of its charge the voltage breaks down under the starter: its contacts burn and the engine fills "
                + "with water without firing.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("rested above 12.0 V for each 12 V block; at 12.0 V or less do not crank")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__RESTED_VOLTAGE)
            .needs(Bank.size())
            .holds(s -> Comparison.moreThan("the battery rests at " + Figures.both(s.subject().getRestedVoltage()),
                s.subject().getRestedVoltage(), Limit.of(Bank.ofBlock(s.subject(), BLOCK), "common practice")))
            .remedy("Do not crank; charge the battery first")
            .build();
    }
}
