// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Sources;

/** An emergency set's battery holds six starts, as the law asks of larger ships. */
final class ChargeForEmergencyStarts {

    private ChargeForEmergencyStarts() {
    }

    static Check<StartingBattery> check() {
        return StartingCharge.check("BATTERY-STARTS-EMERGENCY")
            .title("Emergency set's battery is good for six starts in a row")
            .basis(Sources.yardstick("46 CFR 112.50-1(k)").othersSay("the six starts are from the text; 10 s each and 20 % of "
                + "the charge are common practice"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("6 starts of 10 s out of 20 % of the rated charge")
            .applies(BatteryConditions.emergencySource())
            .needs(GENERATOR_SET__CRANKING_CURRENT)
            .holds(s -> StartingCharge.compare(s.subject(), StartingCharge.sixStarts(s.set().getCrankingCurrent())))
            .remedy("Fit larger blocks or a second string",
                s -> Optional.of(StartingCharge.larger(s.subject(), StartingCharge.sixStarts(s.set().getCrankingCurrent()))))
            .build();
    }
}
