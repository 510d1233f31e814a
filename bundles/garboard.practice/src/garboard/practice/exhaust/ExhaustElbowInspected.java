// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.RISER__ELBOW_INSPECTED_ON;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Riser;
import garboard.practice.Interval;

/** The mixing elbow was taken off and looked into within the year: it rusts through from the inside. */
final class ExhaustElbowInspected {

    private static final int MONTHS = 12;

    private ExhaustElbowInspected() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-ELBOW-INSPECTED", Riser.class)
            .title("Mixing elbow was looked into within the year")
            .why("Hot gas and salt water eat the elbow from within; when the inner wall goes, water runs back to the valves.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("taken off, its wall and ports probed, at least every 12 months; a new elbow counts from its fitting")
            .needs(RISER__ELBOW_INSPECTED_ON)
            .holds(s -> Interval.ofMonths(MONTHS).since(s.subject().getElbowInspectedOn(), "the elbow was looked into").on(s.today()))
            .remedy("Take the elbow off, probe wall and ports, clean or replace it, and enter the date")
            .build();
    }
}
