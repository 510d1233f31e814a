// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Figures;

/** The vacuum at the fuel pump is low while the filter is clean. */
final class CleanVacuum {

    private CleanVacuum() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-VACUUM-CLEAN", FuelSupply.class)
            .title("Fuel vacuum with a clean filter is low")
            .why("A line that sucks hard when all is clean has no reserve for dirt, cold and a low tank.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 10 kPa (3 inHg) at the pump with a new element, or the maker's greatest vacuum")
            .needs(FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP)
            .uses(MAKER_LIMITS__MAXIMUM_FUEL_VACUUM)
            .holds(s -> Comparison.atMost("with a clean filter the pump draws " + Figures.both(s.subject().getCleanVacuumAtPump()),
                s.subject().getCleanVacuumAtPump(), FuelVacuum.limit(s)))
            .remedy("Larger line, fewer fittings, a lower filter, or a booster pump at the tank")
            .build();
    }
}
