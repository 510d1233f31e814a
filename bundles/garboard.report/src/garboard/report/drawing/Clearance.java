// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

/**
 * How high a point that keeps the sea out stands above the water in one attitude.
 *
 * @param part the point
 * @param metres height above the water; negative is under water
 */
public record Clearance(PlacedPart part, double metres) {
}
