// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.model.PhaseSystem;

/** No phase is asked for more than its part of the set. */
final class PhaseWithinRating {

    private PhaseWithinRating() {
    }

    static Check<AcOutput> check() {
        return FullLoad.apparentNeeded(PhaseDemand.check("AC-PHASE-DEMAND"))
            .title("No phase is loaded beyond its part of the set")
            .why("One phase can burn its winding while the meters of the whole set show half load.")
            .basis(Basis.derived("a phase gives a third of the set's apparent power, a leg half of it"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a third of the rated apparent power on each phase, half of it on each leg")
            .holds(s -> {
                PhaseSystem set = s.set().getPhases();
                LoadList.Running worst = PhaseDemand.worst(s.subject(), set);
                return Comparison.atMost(PhaseDemand.inWords(worst, set), PhaseDemand.heaviest(PhaseDemand.on(worst, set)),
                    Limit.of(PhaseDemand.limit(s), "the part of the set that a phase has"));
            })
            .remedy("Move single-phase circuits from the loaded phase to another")
            .build();
    }
}
