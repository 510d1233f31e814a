// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

/**
 * Charts side by side.
 *
 * @param charts from left to right, at most two
 */
public record ChartRow(List<Chart> charts) implements Block {
    public ChartRow {
        charts = List.copyOf(charts);
    }
}
