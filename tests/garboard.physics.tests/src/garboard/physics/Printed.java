// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

/** Holds a result to a figure as it is printed: within half a unit of its last digit, no more. */
public final class Printed {

    private Printed() {
    }

    public static void assertPrinted(String printed, double actual) {
        BigDecimal figure = new BigDecimal(printed.strip());
        double half = 0.5 * Math.pow(10, -figure.scale());
        assertThat(actual).isCloseTo(figure.doubleValue(), within(half * (1 + 1e-9)));
    }
}
