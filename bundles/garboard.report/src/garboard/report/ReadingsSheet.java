// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.GarboardPackage;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.model.Trial;
import garboard.quantity.Quantity;

/** The readings under load: one row for each quantity read with the maker's limit below it, one column for each reading. */
final class ReadingsSheet {

    static final String NAME = "Readings";
    private static final double LABEL_MM = 50;
    private static final double UNIT_MM = 14;
    private static final double FIGURE_MM = 1.7;
    private static final double BETWEEN_MM = 2.5;
    private static final int CLOCK_FIGURES = 5;
    private static final double MOST_READING_MM = 30;
    private static final double HUNDRED = 100;

    private final Material material;
    private final List<Taken> all;
    private final List<EAttribute> read;
    private final int mostColumns;
    private final List<Block> blocks = new ArrayList<>();

    /** A reading and the step it was taken in. */
    private record Taken(LoadStep step, Reading reading) {
        Quantity<?> value(EAttribute field) {
            return (Quantity<?>) reading.eGet(field);
        }
    }

    private ReadingsSheet(Material material, List<Taken> all) {
        this.material = material;
        this.all = all;
        this.read = read(all);
        this.mostColumns = (int) ((Table.LANDSCAPE_MM - LABEL_MM - UNIT_MM) / (BETWEEN_MM + FIGURE_MM * mostFigures()));
    }

    static Optional<Sheet> of(Material material) {
        Trial trial = material.record().getTrial();
        List<Taken> all = trial == null ? List.of() : trial.getLoadSteps().stream()
            .flatMap(step -> step.getReadings().stream().map(reading -> new Taken(step, reading))).toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        var sheet = new ReadingsSheet(material, all);
        sheet.compose(trial);
        return Optional.of(new Sheet(NAME, "Readings under load", Orientation.LANDSCAPE, sheet.blocks));
    }

    private void compose(Trial trial) {
        blocks.add(Block.note("Converted to the units of this report; the record keeps each reading as it was given. A limit is the maker's, where the "
            + "record holds one; the checks judge with it."));
        for (int from = 0; from < all.size(); from += mostColumns) {
            List<Taken> some = all.subList(from, Math.min(from + mostColumns, all.size()));
            int place = blocks.size();
            var rows = new LinkedHashMap<EAttribute, Integer>();
            Table table = table(some, rows);
            blocks.add(table);
            long loads = some.stream().map(taken -> taken.step().getLoad()).filter(load -> load != null).mapToDouble(Quantity::si).distinct().count();
            if (loads > 1) {
                ReadingCharts.add(table, place, rows, blocks);
            }
        }
        addRemarks(trial);
    }

    /** The quantities that were read at least once, in the order of the model. */
    private static List<EAttribute> read(List<Taken> readings) {
        return GarboardPackage.Literals.READING.getEAllAttributes().stream()
            .filter(field -> Quantity.class.isAssignableFrom(field.getEAttributeType().getInstanceClass()))
            .filter(field -> readings.stream().anyMatch(taken -> taken.reading().eIsSet(field))).toList();
    }

    /** @param rows is told in which row each quantity stands */
    private Table table(List<Taken> readings, Map<EAttribute, Integer> rows) {
        int columnCount = Math.min(all.size(), mostColumns);
        double width = Math.min(MOST_READING_MM, (Table.LANDSCAPE_MM - LABEL_MM - UNIT_MM) / columnCount);
        var columns = new ArrayList<Table.Column>();
        columns.add(Table.text("quantity", "Reading", LABEL_MM));
        columns.add(Table.unit("unit", UNIT_MM));
        for (int index = 0; index < columnCount; index++) {
            columns.add(Table.number("reading" + index, index < readings.size() ? heading(readings.get(index), index) : "", width));
        }
        var table = Table.of(columns.toArray(Table.Column[]::new));
        table.row(row(Cell.strong("Load"), "%", columnCount,
            readings.stream().map(taken -> Optional.ofNullable(taken.step().getLoad()).map(load -> load.si() * HUNDRED)).toList(), 0));
        for (EAttribute field : read) {
            rows.put(field, table.size());
            addRows(table, field, readings, columnCount);
        }
        return table.build();
    }

    private static String heading(Taken taken, int index) {
        String clock = Days.clock(taken.reading().getAt());
        return clock.isEmpty() ? "No " + (index + 1) : clock;
    }

    private void addRows(Table.Builder table, EAttribute field, List<Taken> readings, int columnCount) {
        Optional<MakersLimit> limit = MakersLimit.of(field, material.record());
        String unit = material.unit(field);
        int decimals = decimals(field);
        table.row(row(Cell.text(material.labels().label(field)), Figures.sign(unit), columnCount,
            readings.stream().map(taken -> Optional.<Quantity<?>>ofNullable(taken.value(field)).map(value -> value.in(unit))).toList(), decimals));
        limit.ifPresent(found -> table.row(row(Cell.faint("    limit: " + (found.atMost() ? "at most" : "at least")), Figures.sign(unit), columnCount,
            readings.stream().map(taken -> Optional.of(found.value().in(unit))).toList(), decimals)));
    }

    private List<Quantity<?>> entered(EAttribute field) {
        return all.stream().<Quantity<?>>map(taken -> taken.value(field)).filter(value -> value != null).toList();
    }

    private Stream<Quantity<?>> printed(EAttribute field) {
        return Stream.concat(entered(field).stream(), MakersLimit.of(field, material.record()).stream().map(MakersLimit::value));
    }

    private int decimals(EAttribute field) {
        String unit = material.unit(field);
        return printed(field).mapToInt(quantity -> material.figures().shown(quantity, unit).decimals()).max().orElse(0);
    }

    /** Figures, point and sign of the longest number, so that as many readings as can be read stand side by side. */
    private int mostFigures() {
        return read.stream().mapToInt(field -> {
            String format = "%." + decimals(field) + "f";
            String unit = material.unit(field);
            return printed(field).mapToInt(quantity -> String.format(Locale.ROOT, format, quantity.in(unit)).length()).max().orElse(0);
        }).reduce(CLOCK_FIGURES, Math::max);
    }

    private static List<Cell> row(Cell label, String unit, int columnCount, List<Optional<Double>> values, int decimals) {
        var cells = new ArrayList<Cell>();
        cells.add(label);
        cells.add(Cell.text(unit));
        for (int index = 0; index < columnCount; index++) {
            Optional<Double> value = index < values.size() ? values.get(index) : Optional.empty();
            cells.add(value.<Cell>map(number -> new Cell.Number(number, decimals)).orElse(Cell.BLANK));
        }
        return cells;
    }

    /** The instruments by their names, where they are told by what the record calls them. */
    private String instruments(String told) {
        return Stream.of(told.split(",")).map(String::strip).map(one -> material.record().getInstruments().stream()
            .filter(instrument -> one.equals(instrument.getId())).findFirst().flatMap(instrument -> Material.present(instrument.getName())).orElse(one))
            .collect(Collectors.joining(", "));
    }

    private void addRemarks(Trial trial) {
        var lines = new ArrayList<String>();
        trial.getLoadSteps().forEach(step -> Material.present(step.getRemarks())
            .ifPresent(remark -> lines.add((step.getLoad() == null ? "" : "Load " + step.getLoad() + ": ") + remark)));
        var smoke = new LinkedHashMap<String, List<String>>();
        for (int index = 0; index < all.size(); index++) {
            Reading reading = all.get(index).reading();
            String when = heading(all.get(index), index);
            Material.present(reading.getNote()).ifPresent(note -> lines.add(when + ": " + note));
            if (reading.eIsSet(GarboardPackage.Literals.READING__SMOKE)) {
                smoke.computeIfAbsent(material.labels().label(reading.getSmoke()).toLowerCase(Locale.ROOT), key -> new ArrayList<>()).add(when);
            }
        }
        smoke.forEach((what, when) -> lines.add("Smoke " + what + ": " + String.join(", ", when)));
        all.stream().map(taken -> taken.reading().getInstruments()).flatMap(text -> Material.present(text).stream()).distinct()
            .forEach(text -> lines.add("Read with: " + instruments(text)));
        if (!lines.isEmpty()) {
            blocks.add(new Block.Heading("Remarks"));
            blocks.add(Block.body(String.join("\n", lines)));
        }
    }
}
