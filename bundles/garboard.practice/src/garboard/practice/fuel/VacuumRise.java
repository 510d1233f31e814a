// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSupply;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.PressureDifference;

/** The vacuum has not risen so far over the clean reading that the element is due. */
final class VacuumRise {

    private static final PressureDifference LIMIT = PressureDifference.of(3, "inHg");

    private VacuumRise() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-VACUUM-RISE", FuelSupply.class)
            .title("Fuel filter is not clogged: vacuum near the clean reading")
            .why("The element fills up unseen; the vacuum over the clean reading tells before the set stops.")
            .basis(Sources.TRADE_PRESS.othersSay("a rise of 3 to 4 inHg is printed"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 10 kPa (3 inHg) over the reading with a clean element")
            .needs(FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP, FUEL_SUPPLY__VACUUM_AT_PUMP_NOW)
            .holds(s -> Comparison.atMost("the vacuum is " + Figures.both(rise(s.subject())) + " over the clean reading", rise(s.subject()),
                Limit.of(LIMIT, "trade press, the lower of two figures")))
            .remedy("Change the element and read the vacuum again")
            .build();
    }

    private static PressureDifference rise(FuelSupply supply) {
        PressureDifference clean = supply.getCleanVacuumAtPump();
        PressureDifference now = supply.getVacuumAtPumpNow();
        PressureDifference rise = PressureDifference.of(now.si() - clean.si());
        // One gauge reads both, and it may have been off either way each time.
        double halfWidthPa = clean.accuracySi().orElse(0) + now.accuracySi().orElse(0);
        return halfWidthPa == 0 ? rise : rise.withAccuracy(PressureDifference.of(halfWidthPa));
    }
}
