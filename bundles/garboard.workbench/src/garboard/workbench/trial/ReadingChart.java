// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.IAxis;
import org.eclipse.swtchart.ICustomPaintListener;
import org.eclipse.swtchart.ILineSeries;
import org.eclipse.swtchart.ILineSeries.PlotSymbolType;
import org.eclipse.swtchart.ISeries;
import org.eclipse.swtchart.ISeries.SeriesType;
import org.eclipse.swtchart.LineStyle;
import org.eclipse.swtchart.Range;

import garboard.checks.Standing;
import garboard.report.Figures;
import garboard.session.trial.Curves;
import garboard.session.trial.Curves.Along;
import garboard.session.trial.Curves.Curve;
import garboard.session.trial.ReadingLimit;
import garboard.session.trial.ReadingTopic;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** One small chart: the readings of a topic with their limits. Lines differ by mark and by stroke, not by colour alone. */
final class ReadingChart {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final PlotSymbolType[] MARKS = {PlotSymbolType.CIRCLE, PlotSymbolType.SQUARE, PlotSymbolType.DIAMOND};
    private static final LineStyle[] STROKES = {LineStyle.SOLID, LineStyle.DASHDOT, LineStyle.DOT};
    private static final double MARGIN = 0.06;

    private final Desk desk;
    private final Texts.Of texts;
    private final ReadingTopic topic;
    private final Chart chart;
    private final Font small;
    private final Font strong;
    private Optional<Curves> shown = Optional.empty();

    ReadingChart(Composite parent, Desk desk, ReadingTopic topic) {
        this.desk = desk;
        this.texts = desk.texts(ReadingChart.class);
        this.topic = topic;
        chart = new ClippedChart(parent);
        chart.setData("garboard.id", "plot:" + topic.name());
        small = Lettering.font(parent, 90, SWT.NORMAL);
        strong = Lettering.font(parent, 100, SWT.BOLD);
        chart.addDisposeListener(event -> {
            small.dispose();
            strong.dispose();
        });
        chart.getTitle().setFont(strong);
        for (IAxis axis : chart.getAxisSet().getAxes()) {
            axis.getTitle().setFont(small);
            axis.getTick().setFont(small);
            axis.getTick().setFormat(new DecimalFormat("#,##0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)));
            axis.getGrid().setStyle(LineStyle.DOT);
        }
        // Turned on its side a title is hard to read, and at 200 % it comes out blurred; the unit stands in the title of the chart.
        chart.getAxisSet().getYAxis(0).getTitle().setVisible(false);
        chart.getPlotArea().addCustomPaintListener(new Frame());
        chart.getLegend().setFont(small);
        chart.getLegend().setPosition(SWT.BOTTOM);
        chart.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = chart.getTitle().getText();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = said();
            }
        });
        colour();
    }

    /** The frame of the plot, in place of the axes. */
    private final class Frame implements ICustomPaintListener {
        @Override
        public void paintControl(PaintEvent event) {
            Point size = chart.getPlotArea().getSize();
            event.gc.setForeground(desk.palette().faint());
            event.gc.setLineStyle(SWT.LINE_SOLID);
            event.gc.setLineWidth(1);
            event.gc.drawRectangle(0, 0, size.x - 1, size.y - 1);
        }

        @Override
        public boolean drawBehindSeries() {
            return true;
        }
    }

    void moveToFront() {
        chart.moveAbove(null);
    }

    void dispose() {
        chart.dispose();
    }

    void show(Curves now) {
        if (shown.filter(before -> same(before, now)).isPresent()) {
            return;
        }
        shown = Optional.of(now);
        chart.suspendUpdate(true);
        for (ISeries<?> old : chart.getSeriesSet().getSeries()) {
            chart.getSeriesSet().deleteSeries(old.getId());
        }
        for (int index = 0; index < now.curves().size(); index++) {
            add(now.curves().get(index), index);
        }
        now.limits().forEach(limit -> add(limit, now));
        chart.getLegend().setVisible(now.curves().size() > 1 || !now.limits().isEmpty());
        IAxis across = chart.getAxisSet().getXAxis(0);
        IAxis up = chart.getAxisSet().getYAxis(0);
        across.getTitle().setText(now.along() == Along.LOAD ? texts.get("plot.axis.LOAD")
            : texts.get("plot.axis.TIME", now.from().map(from -> from.format(CLOCK)).orElse("")));
        String unit = Figures.sign(now.unit());
        String title = texts.get("topic." + topic.name());
        chart.getTitle().setText(unit.isEmpty() ? title : texts.get("plot.title", title, unit));
        across.setRange(range(now.curves().stream().flatMapToDouble(curve -> Arrays.stream(curve.along())).toArray()));
        up.setRange(range(java.util.stream.DoubleStream.concat(now.curves().stream().flatMapToDouble(curve -> Arrays.stream(curve.values())),
            now.limits().stream().mapToDouble(limit -> limit.value().in(now.unit()))).toArray()));
        colour();
        chart.suspendUpdate(false);
        chart.redraw();
    }

    private void add(Curve curve, int index) {
        ILineSeries<?> series = (ILineSeries<?>) chart.getSeriesSet().createSeries(SeriesType.LINE, curve.field().getName());
        series.setXSeries(curve.along());
        series.setYSeries(curve.values());
        series.setDescription(desk.labels().label(curve.field()));
        series.setSymbolType(MARKS[index % MARKS.length]);
        series.setSymbolSize(Math.max(3, Lettering.height(chart, 0.22)));
        series.setLineStyle(STROKES[index % STROKES.length]);
        series.setLineWidth(2);
        series.setAntialias(SWT.ON);
    }

    private void add(ReadingLimit limit, Curves now) {
        String id = "limit " + limit.check().orElse("maker") + " " + now.limits().indexOf(limit);
        ILineSeries<?> series = (ILineSeries<?>) chart.getSeriesSet().createSeries(SeriesType.LINE, id);
        Range across = range(now.curves().stream().flatMapToDouble(curve -> Arrays.stream(curve.along())).toArray());
        double value = limit.value().in(now.unit());
        series.setXSeries(new double[] {across.lower, across.upper});
        series.setYSeries(new double[] {value, value});
        series.setDescription(words(limit));
        series.setSymbolType(PlotSymbolType.NONE);
        series.setLineStyle(LineStyle.DASH);
        series.setLineWidth(2);
    }

    private String words(ReadingLimit limit) {
        return texts.get(limit.check().isPresent() ? limit.atMost() ? "limit.check.atMost" : "limit.check.atLeast"
            : limit.atMost() ? "limit.maker.atMost" : "limit.maker.atLeast", limit.value(), limit.check().orElse(""));
    }

    /** A little room around the values, and some around one value alone. */
    private static Range range(double[] values) {
        if (values.length == 0) {
            return new Range(0, 1);
        }
        double low = Arrays.stream(values).min().orElseThrow();
        double high = Arrays.stream(values).max().orElseThrow();
        double room = high > low ? (high - low) * MARGIN : high == 0 ? 1 : Math.abs(high) * MARGIN;
        return new Range(low - room, high + room);
    }

    private static boolean same(Curves one, Curves other) {
        if (one.along() != other.along() || !one.unit().equals(other.unit()) || !one.limits().equals(other.limits()) || !one.from().equals(other.from())
                || one.curves().size() != other.curves().size()) {
            return false;
        }
        for (int index = 0; index < one.curves().size(); index++) {
            Curve before = one.curves().get(index);
            Curve now = other.curves().get(index);
            if (before.field() != now.field() || !Arrays.equals(before.along(), now.along()) || !Arrays.equals(before.values(), now.values())) {
                return false;
            }
        }
        return true;
    }

    void colour() {
        Palette palette = desk.palette();
        Color[] inks = {palette.water(), palette.copper(), palette.fuel()};
        chart.setBackground(palette.ground());
        chart.getPlotArea().setBackground(palette.sheet());
        chart.getTitle().setForeground(palette.ink());
        chart.getLegend().setBackground(palette.ground());
        chart.getLegend().setForeground(palette.ink());
        for (IAxis axis : chart.getAxisSet().getAxes()) {
            axis.getTitle().setForeground(palette.faint());
            axis.getTick().setForeground(palette.faint());
            axis.getGrid().setForeground(palette.line());
        }
        int index = 0;
        for (ISeries<?> series : chart.getSeriesSet().getSeries()) {
            boolean limit = series.getId().startsWith("limit ");
            Color ink = limit ? palette.of(Standing.FALLS_SHORT) : inks[index % inks.length];
            ((ILineSeries<?>) series).setLineColor(ink);
            ((ILineSeries<?>) series).setSymbolColor(ink);
            index += limit ? 0 : 1;
        }
        chart.redraw();
    }

    /** {@return the chart in words: of each curve its first, lowest, highest and last value, and the limits} */
    String said() {
        var lines = new ArrayList<String>();
        shown.ifPresent(now -> {
            now.curves().forEach(curve -> lines.add(texts.get("plot.said", desk.labels().label(curve.field()), figure(curve.values()[0]),
                figure(curve.values()[curve.values().length - 1]), figure(Arrays.stream(curve.values()).min().orElseThrow()),
                figure(Arrays.stream(curve.values()).max().orElseThrow()), Figures.sign(now.unit()))));
            now.limits().forEach(limit -> lines.add(words(limit)));
        });
        return String.join(" ", lines);
    }

    private static String figure(double value) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

}
