// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__RATED_FLOW;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.WaterHoseRun;
import garboard.practice.Sources;
import garboard.quantity.Speed;

/** Water moves slowly enough in the suction hose. */
final class SuctionVelocity {

    private static final Speed LIMIT = Speed.of(2.0);
    /** What a new bore is sized for. Pump-piping tables. */
    private static final Speed DESIGN = Speed.of(1.5);

    private SuctionVelocity() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-VELOCITY-SUCTION", WaterHoseRun.class)
            .among(SuctionLine::isSuction, path(WATER_HOSE_RUN__SECTION))
            .title("Water moves slowly in the suction hose")
            .why("Fast water costs suction head: the pump cavitates, wears its impeller and delivers less.")
            .basis(Sources.PUMP_PIPING_TABLES.othersSay("0.6 to 1.5 m/s (2 to 5 ft/s) are usual"))
            .gravity(Gravity.DEFECT)
            .limit("at most 2.0 m/s (6.6 ft/s) at the pump's rated flow")
            .needs(WATER_HOSE_RUN__BORE, WATER_PUMP__RATED_FLOW)
            .holds(s -> Comparison.atMost(HoseVelocity.inWords(s), HoseVelocity.of(s), Limit.of(LIMIT, "pump-piping tables")))
            .remedy("Fit suction hose of the next larger bore", s -> HoseVelocity.largerHose(s, DESIGN))
            .build();
    }
}
