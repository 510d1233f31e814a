// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

import garboard.quantity.Quantity;

/** Checks of the arguments of a physical formula: each answers the SI value, or says what was found and what would be right. */
public final class Argument {

    private Argument() {
    }

    /** SI value of an argument that has to be more than zero. */
    public static double positive(String name, Quantity<?> found) {
        return check(name, found, found.si() > 0 && Double.isFinite(found.si()), "more than 0");
    }

    /** SI value of an argument that must not be negative. */
    public static double notNegative(String name, Quantity<?> found) {
        return check(name, found, found.si() >= 0 && Double.isFinite(found.si()), "0 or more");
    }

    /** SI value of an argument that lies in a closed range; {@code right} words the range in the units of the trade. */
    public static double between(String name, Quantity<?> found, double lowestSi, double highestSi, String right) {
        // Values such as -29 degC do not survive the way through kelvin to the last bit.
        double slack = 1e-9 * Math.max(Math.abs(lowestSi), Math.abs(highestSi));
        return check(name, found, found.si() >= lowestSi - slack && found.si() <= highestSi + slack, right);
    }

    /** A count of at least one. */
    public static int atLeastOne(String name, int found) {
        if (found < 1) {
            throw OutOfRangeException.of(name, found, "1 or more");
        }
        return found;
    }

    private static double check(String name, Quantity<?> found, boolean good, String right) {
        if (!good) {
            throw OutOfRangeException.of(name, found, right);
        }
        return found.si();
    }
}
