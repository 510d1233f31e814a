// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import garboard.report.Block;
import garboard.report.Chart;
import garboard.report.ChartRow;
import garboard.report.Orientation;
import garboard.report.Paper;
import garboard.report.Picture;
import garboard.report.PictureRow;
import garboard.report.Report;
import garboard.report.Sheet;
import garboard.report.Table;
import garboard.report.excel.Line.Content;
import garboard.report.excel.Line.Placed;

/** Lays the blocks of a sheet out as rows. */
final class SheetLayout {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double SIGNATURE_PT = 21;

    /** A picture and the row that its upper edge stands on. */
    record Drawn(Picture picture, int line) {
    }

    /** Photographs and the row that their upper edge stands on. */
    record Photos(PictureRow row, int line) {
    }

    /**
     * A chart, the row that its upper edge stands on, whether it stands in the right half, and the table that it draws.
     */
    record Charted(Chart chart, int line, boolean right, TableLayout table) {
    }

    private final Sheet sheet;
    private final SheetGrid grid;
    private final List<Line> lines = new ArrayList<>();
    private final List<Drawn> drawings = new ArrayList<>();
    private final List<Photos> photographs = new ArrayList<>();
    private final List<Charted> charts = new ArrayList<>();
    private final Map<Integer, TableLayout> tables = new HashMap<>();
    private OptionalInt repeatedLine = OptionalInt.empty();
    private boolean breakNext;

    private SheetLayout(Sheet sheet, Paper paper) {
        this.sheet = sheet;
        this.grid = SheetGrid.of(sheet, paper);
    }

    static SheetLayout of(Sheet sheet, Report report) {
        var layout = new SheetLayout(sheet, report.options().paper());
        layout.addHeading(report);
        for (int index = 0; index < sheet.blocks().size(); index++) {
            layout.add(sheet.blocks().get(index), index);
        }
        return layout;
    }

    SheetGrid grid() {
        return grid;
    }

    List<Line> lines() {
        return lines;
    }

    List<Drawn> drawings() {
        return drawings;
    }

    List<Photos> photographs() {
        return photographs;
    }

    List<Charted> charts() {
        return charts;
    }

    /** {@return the row that comes again on every page} */
    OptionalInt repeatedLine() {
        return repeatedLine;
    }

    private void addHeading(Report report) {
        add(across(sheet.heading(), CellLooks.HEADING, 6, true));
        String number = report.recordNumber().isEmpty() ? "" : "Record " + report.recordNumber();
        String under = number.isEmpty() || report.subject().isEmpty() ? number + report.subject() : number + "  \u00b7  " + report.subject();
        add(across(under, CellLooks.UNDER_HEADING, 4, true));
        add(Line.gap(7.5));
    }

    private void add(Block block, int index) {
        switch (block) {
            case Block.Heading heading -> {
                add(Line.gap(9));
                add(across(heading.text(), CellLooks.SECTION, 4, true));
            }
            case Block.Paragraph paragraph -> addParagraph(paragraph);
            case Block.KeyValues pairs -> addPairs(pairs);
            case Block.SignatureLines signatures -> addSignatures(signatures);
            case Block.PageBreak pageBreak -> breakNext = true;
            case Table table -> addTable(table, index);
            case Picture picture -> {
                drawings.add(new Drawn(picture, lines.size()));
                addSpace(picture.heightMm() * POINTS_PER_MM, false);
            }
            case PictureRow row -> addPhotographs(row);
            case ChartRow row -> {
                for (int place = 0; place < row.charts().size(); place++) {
                    Chart chart = row.charts().get(place);
                    charts.add(new Charted(chart, lines.size(), place > 0, tables.get(chart.table())));
                }
                addSpace(ChartWriter.HEIGHT_PT, false);
            }
        }
    }

    private void addParagraph(Block.Paragraph paragraph) {
        Look look = CellLooks.paragraph(paragraph.style());
        boolean lead = paragraph.style() == Block.Style.CAUTION_LEAD;
        double padding = paragraph.style() == Block.Style.OUTCOME ? 14 : 3;
        Rows.split(List.of(new Placed(grid.all(), new Content.Words(paragraph.text()), look)), grid, padding, lead).forEach(this::add);
        if (!lead) {
            add(new Line(paragraph.style() == Block.Style.CAUTION ? 9 : 4.5, false, false, List.of()));
        }
    }

    private void addPairs(Block.KeyValues pairs) {
        List<SheetGrid.Span> spans = grid.spans(SheetGrid.pairWidths(nominal()));
        List<Block.Entry> entries = pairs.entries();
        int rows = (entries.size() + 1) / 2;
        for (int row = 0; row < rows; row++) {
            var cells = new ArrayList<Placed>();
            addPair(entries.get(row), spans, 0, cells);
            if (row + rows < entries.size()) {
                addPair(entries.get(row + rows), spans, 2, cells);
            }
            Rows.split(cells, grid, 4, false).forEach(this::add);
        }
        add(new Line(6, false, false, List.of()));
    }

    private void addPair(Block.Entry entry, List<SheetGrid.Span> spans, int from, List<Placed> into) {
        into.add(new Placed(spans.get(from), new Content.Words(entry.label()), CellLooks.LABEL));
        into.add(new Placed(spans.get(from + 1), PlainContent.of(entry.value()), PlainContent.look(entry.value(), CellLooks.VALUE)));
    }

    private void addSignatures(Block.SignatureLines signatures) {
        Rows.split(List.of(new Placed(grid.all(), new Content.Words(signatures.statement()), CellLooks.paragraph(Block.Style.BODY))), grid, 5, true)
            .forEach(this::add);
        for (int index = 0; index < signatures.signatories().size(); index++) {
            addSignature(signatures.signatories().get(index), index + 1 < signatures.signatories().size());
        }
    }

    private void addSignature(Block.Signatory signatory, boolean keep) {
        List<SheetGrid.Span> spans = grid.spans(SheetGrid.signatureWidths());
        if (!signatory.statement().isEmpty()) {
            Rows.split(List.of(new Placed(grid.all(), new Content.Words(signatory.statement()), Look.text(8))), grid, 3, true)
                .forEach(line -> add(new Line(line.heightPt(), true, false, line.cells())));
        }
        List<Placed> toWriteOn = List.of(
            new Placed(spans.get(0), new Content.Words(signatory.role()), Look.text(9).strong().atTheBottom()),
            new Placed(spans.get(1), new Content.Words(signatory.name()), CellLooks.TO_WRITE_ON),
            new Placed(spans.get(3), new Content.Words(signatory.placeAndDate()), CellLooks.TO_WRITE_ON),
            new Placed(spans.get(5), Line.NOTHING, CellLooks.TO_WRITE_ON));
        Line line = Rows.line(toWriteOn, grid, 3, true);
        add(new Line(Math.max(SIGNATURE_PT, line.heightPt()), true, false, line.cells()));
        add(Rows.line(List.of(
            new Placed(spans.get(1), new Content.Words("Name, licence"), CellLooks.UNDER_LINE),
            new Placed(spans.get(3), new Content.Words("Place and date"), CellLooks.UNDER_LINE),
            new Placed(spans.get(5), new Content.Words("Signature"), CellLooks.UNDER_LINE)), grid, 4, keep));
    }

    private void addTable(Table table, int index) {
        if (table.repeated()) {
            repeatedLine = OptionalInt.of(lines.size());
        }
        TableLayout laid = TableLayout.of(table, grid, lines.size());
        tables.put(index, laid);
        laid.lines().forEach(this::add);
        add(new Line(7.5, false, false, List.of()));
    }

    private void addPhotographs(PictureRow row) {
        photographs.add(new Photos(row, lines.size()));
        double height = row.photographs().stream().mapToDouble(PictureRow.Photo::heightMm).max().orElse(0);
        addSpace(height * POINTS_PER_MM + 3, true);
        double half = nominal() / 2;
        List<SheetGrid.Span> spans = grid.spans(new double[] {half, half});
        var captions = new ArrayList<Placed>();
        for (int index = 0; index < row.photographs().size(); index++) {
            captions.add(new Placed(spans.get(index), new Content.Words(row.photographs().get(index).caption()), Look.text(8)));
        }
        Rows.split(captions, grid, 10, false).forEach(this::add);
    }

    /** Empty rows that stay together, for something that floats over them. */
    private void addSpace(double heightPt, boolean keepWithNext) {
        int rows = (int) Math.ceil(heightPt / Line.HIGHEST_PT);
        for (int row = 0; row < rows; row++) {
            add(new Line(Rows.rounded(heightPt / rows), keepWithNext || row + 1 < rows, false, List.of()));
        }
    }

    private Line across(String text, Look look, double paddingPt, boolean keep) {
        return Rows.line(List.of(new Placed(grid.all(), text.isEmpty() ? Line.NOTHING : new Content.Words(text), look)), grid, paddingPt, keep);
    }

    private void add(Line line) {
        lines.add(breakNext ? new Line(line.heightPt(), line.keep(), true, line.cells()) : line);
        breakNext = false;
    }

    private double nominal() {
        return sheet.orientation() == Orientation.PORTRAIT ? Table.PORTRAIT_MM : Table.LANDSCAPE_MM;
    }
}
