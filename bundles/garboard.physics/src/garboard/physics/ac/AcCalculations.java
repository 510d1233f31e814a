// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;
import java.util.stream.Stream;

import garboard.physics.calculation.Calculation;

/** The calculations of the alternating-current side, by name. */
public final class AcCalculations {

    private AcCalculations() {
    }

    public static List<Calculation> all() {
        return Stream.of(FrequencyCalculations.all(), VoltageCalculations.all(), PowerCalculations.all(), MotorCalculations.all(),
                ProtectionCalculations.all())
                .flatMap(List::stream).toList();
    }
}
