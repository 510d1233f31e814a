// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.quantity.Display;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;

/** Writes quantities into the sentences of verdicts, limits and remedies, for readers of either system of units. */
public final class Figures {

    private static final Display METRIC = Display.of(UnitSystem.SI);
    private static final Display AMERICAN = Display.of(UnitSystem.US);

    private Figures() {
    }

    /** In both systems, such as {@code 20.7 kPa (3 psi)}; once only where both use the same unit. */
    public static String both(Quantity<?> quantity) {
        String metric = METRIC.format(quantity);
        String american = AMERICAN.format(quantity);
        return metric.equals(american) ? metric : metric + " (" + american + ")";
    }

    /** In two units named, for kinds whose customary unit does not suit the matter, such as {@code 1.42 m3 (50 ft3)}. */
    public static String in(Quantity<?> quantity, String metricUnit, String americanUnit) {
        return Display.formatIn(quantity, metricUnit) + " (" + Display.formatIn(quantity, americanUnit) + ")";
    }

    /** In the metric unit alone, for a figure that stands beside one in both. */
    public static String metric(Quantity<?> quantity) {
        return METRIC.format(quantity);
    }
}
