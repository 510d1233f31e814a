// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__KIND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.Seacock;
import garboard.model.ValveKind;
import garboard.practice.Sources;

/** The valve at the hull is a seacock or a marine ball valve, turned by a quarter. */
final class SeacockKind {

    private SeacockKind() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-KIND", Seacock.class)
            .title("Valve at the hull is a quarter-turn seacock")
            .why("A gate valve hides whether it is shut and jams; a household valve sits on threads that do not match the hull fitting.")
            .basis(Sources.ABYC_H_27)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("flanged seacock, or in-line ball valve made for it; no gate valve, no household ball valve")
            .applies(RawWaterConditions.seacockFitted())
            .needs(SEACOCK__KIND)
            .holds(s -> switch (s.subject().getKind()) {
                case FLANGED_SEACOCK -> Comparison.holds("a flanged seacock is fitted", true);
                case IN_LINE_BALL_VALVE -> Comparison.holds("an in-line ball valve is fitted", true);
                case GATE_VALVE -> Comparison.holds("a gate valve is fitted", false);
                default -> Comparison.holds("a household ball valve is fitted", false);
            })
            .remedy("Replace the valve by a flanged seacock", s -> Optional.of(Remedy.of("Replace the valve by a flanged seacock")
                .setting(s.subject(), SEACOCK__KIND, ValveKind.FLANGED_SEACOCK)))
            .build();
    }
}
