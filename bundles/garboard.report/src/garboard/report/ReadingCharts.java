// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.GarboardPackage.Literals;

/**
 * Charts of the readings against the load, for the workbook to draw: what belongs together and is of one size in one chart, each limit
 * with its reading. Few lines to a chart, or the key would take its place.
 */
final class ReadingCharts {

    private record Wanted(String title, List<EAttribute> fields) {
    }

    private static final List<Wanted> WANTED = List.of(
        new Wanted("Frequency", List.of(Literals.READING__FREQUENCY)),
        new Wanted("Voltage", List.of(Literals.READING__VOLTAGE1, Literals.READING__VOLTAGE2, Literals.READING__VOLTAGE3)),
        new Wanted("Coolant and compartment", List.of(Literals.READING__COOLANT_TEMPERATURE, Literals.READING__COMPARTMENT_TEMPERATURE)),
        new Wanted("Raw water and wet exhaust", List.of(Literals.READING__RAW_WATER_IN, Literals.READING__RAW_WATER_OUT,
            Literals.READING__EXHAUST_MIXED)),
        new Wanted("Exhaust before injection", List.of(Literals.READING__EXHAUST_DRY)),
        new Wanted("Back pressure", List.of(Literals.READING__BACK_PRESSURE)),
        new Wanted("Oil pressure", List.of(Literals.READING__OIL_PRESSURE)));

    private ReadingCharts() {
    }

    /**
     * @param place index of the table among the blocks
     * @param rows in which row of the table each quantity stands
     */
    static void add(Table table, int place, Map<EAttribute, Integer> rows, List<Block> into) {
        var charts = new ArrayList<Chart>();
        for (Wanted wanted : WANTED) {
            List<EAttribute> read = wanted.fields.stream().filter(rows::containsKey).toList();
            if (!read.isEmpty()) {
                var series = new ArrayList<Chart.Series>();
                read.forEach(field -> addSeries(table, rows.get(field), series));
                charts.add(new Chart(wanted.title, place, 0, "Load, %", series, text(table, rows.get(read.getFirst()), 1)));
            }
        }
        for (int index = 0; index < charts.size(); index += 2) {
            into.add(new ChartRow(charts.subList(index, Math.min(index + 2, charts.size()))));
        }
    }

    private static void addSeries(Table table, int row, List<Chart.Series> into) {
        String name = text(table, row, 0);
        into.add(new Chart.Series(name, row, false));
        int below = row + 1;
        boolean limit = below < table.rows().size() && table.rows().get(below).cells().getFirst() instanceof Cell.Text label
            && label.weight() == Cell.Weight.FAINT;
        if (limit) {
            into.add(new Chart.Series("Limit: " + name.toLowerCase(Locale.ROOT), below, true));
        }
    }

    private static String text(Table table, int row, int column) {
        return table.rows().get(row).cells().get(column) instanceof Cell.Text text ? text.text() : "";
    }
}
