// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.OutOfRangeException;
import garboard.physics.Argument;
import garboard.quantity.Frequency;
import garboard.quantity.RotationalSpeed;

/** Speed and frequency of a synchronous machine: n = 120 f / p in r/min ({@link AcSources#BASIC}). */
public final class SynchronousSpeed {

    private SynchronousSpeed() {
    }

    public static RotationalSpeed speed(Frequency frequency, int poles) {
        return RotationalSpeed.of(2 * Math.PI * Argument.positive("frequency", frequency) / pairs(poles));
    }

    public static Frequency frequency(RotationalSpeed speed, int poles) {
        return Frequency.of(Argument.positive("speed", speed) * pairs(poles) / (2 * Math.PI));
    }

    private static int pairs(int poles) {
        if (poles < 2 || poles % 2 != 0) {
            throw OutOfRangeException.of("poles", poles, "an even number from 2 up");
        }
        return poles / 2;
    }
}
