// SPDX-License-Identifier: EPL-2.0
package garboard.practice.sample;

import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__CLAMPS_PER_END;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.WaterHoseRun;

/** Every raw-water hose has two clamps at each end, also above the waterline. */
final class RawWaterHosesDoublyClamped {

    private static final int CLAMPS = 2;

    private RawWaterHosesDoublyClamped() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("YARD-HOSE-CLAMPS", WaterHoseRun.class)
            .title("Raw-water hoses have two clamps at each end")
            .why("A hose that comes off a running set pumps the sea into the boat.")
            .basis(YardPractice.HOUSE_RULES)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("two clamps at each end")
            .needs(WATER_HOSE_RUN__CLAMPS_PER_END)
            .holds(s -> Comparison.holds("the hose has " + s.subject().getClampsPerEnd() + " at each end",
                s.subject().getClampsPerEnd() >= CLAMPS))
            .remedy("Fit a second clamp", s -> Optional.of(Remedy.of("Fit a second clamp at each end")
                .setting(s.subject(), WATER_HOSE_RUN__CLAMPS_PER_END, CLAMPS)))
            .build();
    }
}
