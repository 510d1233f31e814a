// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__BACK_FEED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.TransferSwitch;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The pins of the shore inlet are dead while the set runs. */
final class NoBackFeed {

    private static final Voltage MOST = Voltage.of(1, "V");

    private NoBackFeed() {
    }

    static Check<TransferSwitch> check() {
        return Check.check("AC-BACK-FEED", TransferSwitch.class)
            .title("Shore inlet is dead while the set runs")
            .why("Whoever touches the pins of a live inlet, or works on the dock's dead cable, touches mains voltage.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 1 V at the pins, plug out, set on the bus")
            .applies(AcConditions.shoreSupply())
            .needs(TRANSFER_SWITCH__BACK_FEED_VOLTAGE)
            .holds(s -> Comparison.atMost("the dead inlet shows " + Figures.both(s.subject().getBackFeedVoltage()),
                s.subject().getBackFeedVoltage(), Limit.of(MOST, "common practice")))
            .remedy("Find the pole that is not switched and switch it; do not use the inlet before")
            .build();
    }
}
