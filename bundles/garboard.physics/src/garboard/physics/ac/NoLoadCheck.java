// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Frequency;
import garboard.quantity.Voltage;

/** Quick look at a running set without load ({@link AcSources#NO_LOAD_CHECK}). */
public final class NoLoadCheck {

    private NoLoadCheck() {
    }

    /** Highest voltage: rated and the steady deviation of the class. */
    public static Voltage highestVoltage(Voltage rated, PerformanceClass wanted, SetTraits set) {
        double share = ClassCriterion.STEADY_VOLTAGE_DEVIATION.limit(wanted, set).orElseThrow().si();
        return Voltage.of(Argument.positive("rated voltage", rated) * (1 + share));
    }

    /** Highest frequency: rated and the droop of the class. */
    public static Frequency highestFrequency(Frequency rated, PerformanceClass wanted) {
        double share = ClassCriterion.FREQUENCY_DROOP.limit(wanted, SetTraits.ordinary()).orElseThrow().si();
        return Frequency.of(Argument.positive("rated frequency", rated) * (1 + share));
    }
}
