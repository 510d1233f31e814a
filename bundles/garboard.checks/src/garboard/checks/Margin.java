// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.OptionalDouble;

import garboard.quantity.Quantity;

/**
 * Signed distance from the limit: positive is on the right side.
 *
 * @param distance in the quantity's own kind (a temperature's margin is a temperature difference)
 * @param perCent distance relative to the limit's size in per cent; empty when the limit is zero or has no natural zero
 */
public record Margin(Quantity<?> distance, OptionalDouble perCent) {
}
