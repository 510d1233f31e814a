// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

import garboard.quantity.Quantity;

/** Holds a quantity to a printed figure with its unit, such as {@code 0.1543 m}: within half a unit of the last digit. */
public final class PrintedQuantity {

    private PrintedQuantity() {
    }

    public static void assertPrinted(String printed, Quantity<?> actual) {
        String[] parts = printed.strip().split(" ", 2);
        Printed.assertPrinted(parts[0], actual.in(parts.length == 1 ? "1" : parts[1]));
    }
}
