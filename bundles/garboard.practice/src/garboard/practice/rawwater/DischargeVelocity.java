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
import garboard.model.WaterSection;
import garboard.practice.Sources;
import garboard.quantity.Speed;

/** Water does not race through the hoses behind the pump. */
final class DischargeVelocity {

    private static final Speed LIMIT = Speed.of(3.0);

    private DischargeVelocity() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-VELOCITY-DISCHARGE", WaterHoseRun.class)
            .among(DischargeVelocity::behindThePump, path(WATER_HOSE_RUN__SECTION))
            .title("Water does not race behind the pump")
            .why("Fast sea water erodes copper-nickel tubes and elbows, and the pump works against the loss.")
            .basis(Sources.PUMP_PIPING_TABLES.othersSay("1.5 to 3.0 m/s (5 to 10 ft/s) are usual"))
            .gravity(Gravity.DEFECT)
            .limit("at most 3.0 m/s (9.8 ft/s) at the pump's rated flow")
            .needs(WATER_HOSE_RUN__BORE, WATER_PUMP__RATED_FLOW)
            .holds(s -> Comparison.atMost(HoseVelocity.inWords(s), HoseVelocity.of(s), Limit.of(LIMIT, "pump-piping tables")))
            .remedy("Fit hose of the next larger bore", s -> HoseVelocity.largerHose(s, LIMIT))
            .build();
    }

    private static boolean behindThePump(WaterHoseRun hose) {
        return hose.getSection() != WaterSection.SUCTION && hose.getSection() != WaterSection.NOT_ENTERED;
    }
}
