// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.420(d): no tank, filter or fuel fitting right above or below the battery. */
final class NotAboveOrBelowFuelByLaw {

    private NotAboveOrBelowFuelByLaw() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-FUEL-FITTINGS-33CFR", StartingBattery.class)
            .title("Battery stands neither above nor below fuel parts (gasoline boats)")
            .why("Fuel that drips on a battery, or vapour that collects under it, is lit by the spark of a cable taken off.")
            .basis(Sources.cfr33("183.420(d)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("not directly above or below a fuel tank, filter or fitting in a fuel line")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(Conditions.asked(STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS))
            .needs(STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS)
            .holds(s -> Answers.no(s.subject().getAboveOrBelowFuelFittings(), "no fuel tank, filter or fitting is right above "
                + "or below the battery",
                "a fuel tank, filter or fitting is right above or below the battery"))
            .remedy("Move the battery or the fuel part sideways")
            .build();
    }
}
