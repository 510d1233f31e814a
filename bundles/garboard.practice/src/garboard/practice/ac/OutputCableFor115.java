// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.practice.cable.OutputCable;
import garboard.quantity.Current;

/** 46 CFR Table 111.60-7 as a yardstick: the generator cable may carry 115 % of the set's rating. */
final class OutputCableFor115 {

    private OutputCableFor115() {
    }

    static Check<AcOutput> check() {
        return FullLoad.needed(Check.check("AC-CABLE-115", AcOutput.class))
            .title("Output cable carries the set's full load with a reserve")
            .why("The breaker lets 115 % pass for hours; a cable that may not carry it ages and burns where it is hottest.")
            .basis(Sources.yardstick("46 CFR Table 111.60-7").othersSay("33 CFR 183.425 asks for the circuit's current only"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("permitted current by 33 CFR 183.425 Table 5 and its notes at least 115 % of the set's full-load current")
            .applies(OutputCable.readableSize())
            .needs(OutputCable.decidingPermitted())
            .holds(OutputCableFor115::compare)
            .remedy("Lay a larger cable or one with insulation for a higher temperature", s -> OutputCable.carrying(s.subject().getOutputCable(), least(s)))
            .build();
    }

    private static Comparison compare(Situation<AcOutput> s) {
        CableRun cable = s.subject().getOutputCable();
        return OutputCable.permitted(cable).map(allowed -> Comparison.atLeast(OutputCable.inWords(cable) + " may carry " + Figures.both(allowed)
            + "; the set gives " + Figures.both(FullLoad.current(s)), allowed,
            Limit.of(least(s), "46 CFR Table 111.60-7: 115 % of full load")))
            .orElseGet(() -> Comparison.holds(OutputCable.inWords(cable) + " is thinner than 18 AWG, where the table begins", false));
    }

    private static Current least(Situation<AcOutput> s) {
        return Current.of(1.15 * FullLoad.current(s).si());
    }
}
