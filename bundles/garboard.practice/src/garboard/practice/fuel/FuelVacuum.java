// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.model.MakerLimits;
import garboard.quantity.PressureDifference;

/** The limit for the vacuum at the fuel pump with a clean filter. */
final class FuelVacuum {

    private static final PressureDifference CLEAN = PressureDifference.of(10, "kPa");

    private FuelVacuum() {
    }

    static Limit<PressureDifference> limit(Situation<FuelSupply> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumFuelVacuum), CLEAN, "common practice");
    }
}
