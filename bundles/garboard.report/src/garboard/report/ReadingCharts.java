// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Charts of the readings against the load, for the workbook to draw: readings of one unit together, each limit with its reading. */
final class ReadingCharts {

    /** What is plotted, by unit, and the title of the chart. Currents and flows say little against the load. */
    private static final Map<String, String> TITLES = titles();

    private ReadingCharts() {
    }

    private static Map<String, String> titles() {
        var titles = new LinkedHashMap<String, String>();
        titles.put("Hz", "Frequency");
        titles.put("V", "Voltage");
        titles.put("\u00b0C", "Temperature");
        titles.put("\u00b0F", "Temperature");
        titles.put("kPa", "Pressure");
        titles.put("psi", "Pressure");
        titles.put("inHg", "Pressure");
        titles.put("inH2O", "Pressure");
        titles.put("Pa", "Pressure");
        return titles;
    }

    static void add(Table table, int place, List<Block> into) {
        var byUnit = new LinkedHashMap<String, List<Chart.Series>>();
        String reading = "";
        for (int row = 1; row < table.rows().size(); row++) {
            String unit = text(table, row, 1);
            boolean limit = table.rows().get(row).cells().getFirst() instanceof Cell.Text label && label.weight() == Cell.Weight.FAINT;
            reading = limit ? reading : text(table, row, 0);
            byUnit.computeIfAbsent(unit, key -> new ArrayList<>())
                .add(new Chart.Series(limit ? "Limit: " + reading.toLowerCase(java.util.Locale.ROOT) : reading, row, limit));
        }
        var charts = new ArrayList<Chart>();
        TITLES.forEach((unit, title) -> {
            for (List<Chart.Series> together : apart(byUnit.getOrDefault(unit, List.of()), table)) {
                boolean alone = together.stream().filter(series -> !series.limit()).count() == 1;
                String named = alone ? together.getFirst().name() : title;
                charts.add(new Chart(named, place, 0, "Load, %", together, unit));
            }
        });
        for (int index = 0; index < charts.size(); index += 2) {
            into.add(new ChartRow(charts.subList(index, Math.min(index + 2, charts.size()))));
        }
    }

    /** Readings of one unit, those of one size together: a battery's 13 V would flatten a line's 230 V. */
    private static List<List<Chart.Series>> apart(List<Chart.Series> series, Table table) {
        var groups = new ArrayList<List<Chart.Series>>();
        List<Chart.Series> last = List.of();
        for (Chart.Series one : series) {
            List<Chart.Series> home = one.limit() ? last : groups.stream()
                .filter(group -> alike(largest(group.getFirst(), table), largest(one, table))).findFirst().orElseGet(ArrayList::new);
            if (home.isEmpty()) {
                groups.add(home);
            }
            home.add(one);
            last = home;
        }
        return groups;
    }

    private static boolean alike(double one, double other) {
        return one > 0 && other > 0 && one / other < 4 && other / one < 4;
    }

    private static double largest(Chart.Series series, Table table) {
        return table.columns().stream().filter(column -> column.kind() == Table.Kind.NUMBER)
            .mapToDouble(column -> table.number(series.row(), column.key()).orElse(0)).max().orElse(0);
    }

    private static String text(Table table, int row, int column) {
        return table.rows().get(row).cells().get(column) instanceof Cell.Text text ? text.text() : "";
    }
}
