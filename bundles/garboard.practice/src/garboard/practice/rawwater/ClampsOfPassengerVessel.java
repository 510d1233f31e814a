// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__CLAMPS_PER_END;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.WaterHoseRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.410(d): hoses are clamped twice on each end. */
final class ClampsOfPassengerVessel {

    private ClampsOfPassengerVessel() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-CLAMPS-182-410", WaterHoseRun.class)
            .title("Two clamps on each hose end (small passenger vessels)")
            .why("A hose that comes off floods the machinery space.")
            .basis(Sources.cfr46("182.410(d)").othersSay("one clamp may do on a beaded or serrated pipe; the end of that"
                + " sentence was not seen"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("2 corrosion-resistant clamps on each end, not held by a spring; one only on a suitable beaded or serrated pipe")
            .applies(Conditions.smallPassengerVessel())
            .applies(RawWaterConditions.hose())
            .needs(WATER_HOSE_RUN__CLAMPS_PER_END)
            .holds(s -> {
                int count = s.subject().getClampsPerEnd();
                return Comparison.holds("each end has " + Clamps.inWords(count)
                    + (count == 1 ? "; that is only allowed where the pipe is beaded or serrated" : ""), count >= Clamps.WANTED);
            })
            .remedy("Add a second clamp, or show the inspector the bead", s -> Optional.of(
                Remedy.of("Add a second clamp on each end, or show the inspector the bead or serrations")
                    .setting(s.subject(), WATER_HOSE_RUN__CLAMPS_PER_END, Clamps.WANTED)))
            .build();
    }
}
