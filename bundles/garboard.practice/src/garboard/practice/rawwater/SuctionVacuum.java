// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.practice.Figures;
import garboard.quantity.PressureDifference;

/** The vacuum measured at the pump is low. */
final class SuctionVacuum {

    private static final PressureDifference LIMIT = PressureDifference.of(20, "kPa");

    private SuctionVacuum() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-VACUUM-MEASURED", RawWaterCircuit.class)
            .title("Vacuum at the raw-water pump is low")
            .why("A high vacuum is a blocked strainer, a flattened hose or too long a line: the flow is falling off already.")
            .basis(Basis.commonPractice().othersSay("10 kPa (3 inHg) is what a good line shows"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 20 kPa (6 inHg), or the maker's greatest vacuum")
            .needs(RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP)
            .uses(path(MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM))
            .holds(s -> Comparison.atMost("the gauge at the pump shows "
                + Figures.both(s.subject().getMeasuredVacuumAtPump()) + " of vacuum",
                s.subject().getMeasuredVacuumAtPump(),
                Limit.makerOr(s.maker(MakerLimits::getMaximumRawWaterVacuum), LIMIT, "common practice")))
            .remedy("Clean grating and strainer, look for a flattened hose, then a larger bore or a lower pump")
            .build();
    }
}
