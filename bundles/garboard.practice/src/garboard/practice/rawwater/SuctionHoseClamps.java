// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__CLAMPS_PER_END;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.WaterHoseRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Two clamps on each end of the hose below the waterline. */
final class SuctionHoseClamps {

    private SuctionHoseClamps() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-HOSE-CLAMPS", WaterHoseRun.class)
            .among(SuctionLine::isSuction, path(WATER_HOSE_RUN__SECTION))
            .title("Two clamps on each end of the suction hose")
            .why("A single clamp that rusts through below the waterline lets the sea in.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 2 clamps on each end")
            .applies(Conditions.unlessLawForPassengers("182.410(d)"))
            .applies(RawWaterConditions.hose())
            .needs(WATER_HOSE_RUN__CLAMPS_PER_END)
            .holds(s -> Comparison.holds("each end has " + Clamps.inWords(s.subject().getClampsPerEnd()),
                s.subject().getClampsPerEnd() >= Clamps.WANTED))
            .remedy("Add a second clamp; lengthen the spigot where there is no room", s -> Optional.of(
                Remedy.of("Add a second clamp on each end; lengthen the spigot where there is no room")
                    .setting(s.subject(), WATER_HOSE_RUN__CLAMPS_PER_END, Clamps.WANTED)))
            .build();
    }
}
