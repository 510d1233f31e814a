// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

/**
 * A chart that the workbook draws itself from the numbers of a table on the same sheet: lines with marks over a common axis. The
 * numbers of a series stand in one row of the table, in its columns of numbers.
 *
 * @param title above it
 * @param table index of the table's block in the sheet; it must come before the chart
 * @param across the row with the values of the horizontal axis
 * @param acrossTitle title of the horizontal axis with its unit
 * @param series what is drawn
 * @param upTitle unit of the vertical axis
 */
public record Chart(String title, int table, int across, String acrossTitle, List<Series> series, String upTitle) {

    /**
     * One line of a chart.
     *
     * @param name in the key
     * @param row row of the table that holds it
     * @param limit whether it is a limit: drawn dashed and without marks
     */
    public record Series(String name, int row, boolean limit) {
    }

    public Chart {
        series = List.copyOf(series);
    }
}
