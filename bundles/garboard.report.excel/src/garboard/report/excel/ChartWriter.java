// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import garboard.report.Chart;
import garboard.report.Table;

/** Puts a chart of the spreadsheet program's own over the rows that the layout left free for it. */
final class ChartWriter {

    static final double HEIGHT_PT = 196;

    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double GAP_MM = 4;
    private static final double LINE_PT = 1.5;
    private static final double TITLE_PT = 10;
    private static final short MARK_SIZE = 6;
    /** A longer key below the chart would leave no room for the chart. */
    private static final int MOST_BELOW = 2;
    private static final int KEY_HUNDREDTHS_PT = 800;
    private static final int GRID_INK = 0xD5D9DC;
    /** Told apart by mark and darkness, so that a copier does not make them one. */
    private static final MarkerStyle[] MARKS =
        {MarkerStyle.CIRCLE, MarkerStyle.SQUARE, MarkerStyle.TRIANGLE, MarkerStyle.DIAMOND, MarkerStyle.X};
    private static final int[] INKS = {0x23424F, 0x9A4B2E, 0x5F8A6B, 0x7A6A9C, 0x777777};

    private final XSSFSheet target;
    private final SheetLayout layout;

    ChartWriter(XSSFSheet target, SheetLayout layout) {
        this.target = target;
        this.layout = layout;
    }

    void draw(SheetLayout.Charted charted) {
        Chart wanted = charted.chart();
        Table table = charted.table().table();
        var anchors = new Anchors(layout);
        double half = anchors.widthMm() / 2;
        XSSFChart chart = target.createDrawingPatriarch().createChart(anchors.over(charted.line(),
            new double[] {charted.right() ? half + GAP_MM / 2 : 0, half - GAP_MM / 2, HEIGHT_PT * MM_PER_POINT - GAP_MM}));
        chart.setTitleText(wanted.title());
        chart.getTitle().getBody().getParagraph(0).addDefaultRunProperties().setFontSize(TITLE_PT);
        chart.getTitle().getBody().getParagraph(0).getTextRuns().forEach(run -> run.setFontSize(TITLE_PT));
        chart.setTitleOverlay(false);
        frameless(chart);
        if (wanted.series().size() > 1) {
            legend(chart, wanted.series().size() > MOST_BELOW ? LegendPosition.RIGHT : LegendPosition.BOTTOM);
        }
        XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
        across.setTitle(wanted.acrossTitle());
        range(across, values(table, wanted.across()), true);
        XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
        up.setTitle(wanted.upTitle());
        up.getOrAddMajorGridProperties().setLineProperties(line(GRID_INK, 0.5));
        range(up, wanted.series().stream().flatMapToDouble(series -> values(table, series.row())), false);
        across.setNumberFormat("General");
        up.setNumberFormat("General");
        across.crossAxis(up);
        up.crossAxis(across);
        var data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
        for (int index = 0; index < wanted.series().size(); index++) {
            addSeries(data, charted, index);
        }
        chart.plot(data);
        chart.displayBlanksAs(DisplayBlanks.GAP); // a reading that was not taken is no zero
    }

    private void addSeries(XDDFScatterChartData data, SheetLayout.Charted charted, int index) {
        Chart.Series wanted = charted.chart().series().get(index);
        var series = (XDDFScatterChartData.Series) data.addSeries(source(charted.table(), charted.chart().across()),
            source(charted.table(), wanted.row()));
        series.setTitle(wanted.name(), null);
        series.setSmooth(false);
        XDDFLineProperties line = line(INKS[index % INKS.length], LINE_PT);
        if (wanted.limit()) {
            series.setMarkerStyle(MarkerStyle.NONE);
            line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
        } else {
            series.setMarkerStyle(MARKS[index % MARKS.length]);
            series.setMarkerSize(MARK_SIZE);
        }
        series.setLineProperties(line);
    }

    private static void legend(XSSFChart chart, LegendPosition position) {
        chart.getOrAddLegend().setPosition(position);
        var text = chart.getCTChart().getLegend().addNewTxPr();
        text.addNewBodyPr();
        text.addNewP().addNewPPr().addNewDefRPr().setSz(KEY_HUNDREDTHS_PT);
    }

    /** Ends of an axis at round numbers around the values; from zero where that costs little. */
    private static void range(XDDFValueAxis axis, DoubleStream values, boolean fromZero) {
        double[] sorted = values.sorted().toArray();
        if (sorted.length == 0) {
            return;
        }
        double least = sorted[0];
        double most = sorted[sorted.length - 1];
        boolean zero = fromZero || least >= 0 && least < most * 0.6;
        double low = zero ? Math.min(0, least) : least;
        double span = Math.max(most - low, Math.abs(most) * 0.02);
        double step = step(span);
        axis.setMinimum(zero && least >= 0 ? 0 : Math.floor(low / step) * step);
        axis.setMaximum(Math.max(Math.ceil(most / step), Math.floor(low / step) + 1) * step);
        axis.setMajorUnit(step);
    }

    private static double step(double span) {
        double power = Math.pow(10, Math.floor(Math.log10(span <= 0 ? 1 : span)));
        double leading = span / power;
        return power * (leading < 2 ? 0.5 : leading < 5 ? 1 : 2);
    }

    private static DoubleStream values(Table table, int row) {
        return numberColumns(table).stream().flatMapToDouble(column -> table.number(row, table.columns().get(column).key()).stream());
    }

    private static List<Integer> numberColumns(Table table) {
        return IntStream.range(0, table.columns().size()).filter(column -> table.columns().get(column).kind() == Table.Kind.NUMBER).boxed()
            .toList();
    }

    private XDDFNumericalDataSource<Double> source(TableLayout table, int row) {
        List<Integer> columns = numberColumns(table.table());
        CellAddress first = table.address(row, columns.getFirst());
        CellAddress last = table.address(row, columns.getLast());
        return XDDFDataSourcesFactory.fromNumericCellRange(target,
            new CellRangeAddress(first.getRow(), last.getRow(), first.getColumn(), last.getColumn()));
    }

    private static void frameless(XSSFChart chart) {
        var shape = new XDDFShapeProperties();
        var none = new XDDFLineProperties();
        none.setFillProperties(new XDDFNoFillProperties());
        shape.setLineProperties(none);
        chart.getCTChartSpace().setSpPr(shape.getXmlObject());
    }

    private static XDDFLineProperties line(int rgb, double widthPt) {
        var properties = new XDDFLineProperties(new XDDFSolidFillProperties(
            XDDFColor.from(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb})));
        properties.setWidth(widthPt);
        return properties;
    }
}
