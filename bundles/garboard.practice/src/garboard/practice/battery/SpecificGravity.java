// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import java.util.Locale;

import garboard.quantity.Ratio;

/** Writes specific gravity the way a hydrometer shows it. */
final class SpecificGravity {

    private SpecificGravity() {
    }

    /** Three decimals: {@code 1.265}. */
    static String inWords(Ratio gravity) {
        return String.format(Locale.ROOT, "%.3f", gravity.si());
    }
}
