// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__REST_TIME;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.TimeSpan;

/** The battery had lain long enough without load or charge for its voltage to tell its charge. */
final class BatteryRested {

    private static final TimeSpan LEAST = TimeSpan.of(6, "h");

    private BatteryRested() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-REST", StartingBattery.class)
            .title("Battery had rested when its voltage was read")
            .why("Just after charging, a lead-acid battery shows a voltage that belongs to a fuller one.")
            .basis(Basis.commonPractice().othersSay(
                "US Army TM 5-3805-262-20: 3 min of rest are enough after the lamps have taken the surface charge off for 15 s"))
            .gravity(Gravity.ADVICE)
            .limit("at least 6 h without load or charge")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__REST_TIME)
            .holds(s -> Comparison.atLeast("the battery had rested for " + Figures.both(s.subject().getRestTime()),
                s.subject().getRestTime(), Limit.of(LEAST, "common practice")))
            .remedy("Let it rest for 6 h, or switch lamps on for 15 s and wait 3 min; then read the voltage again")
            .build();
    }
}
