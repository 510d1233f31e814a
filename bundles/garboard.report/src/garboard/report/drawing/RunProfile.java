// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.report.Figures;
import garboard.report.Picture;
import garboard.report.drawing.PlacedPart.Circuit;
import garboard.report.drawing.Way.Stop;

/**
 * The exhaust and the raw-water path unrolled: height above the loaded waterline over the distance along the run, measured straight from
 * place to place.
 */
public final class RunProfile {

    private static final double LEFT_MM = 16;
    private static final double RIGHT_MM = 6;
    private static final double NAMES_MM = 17;
    private static final double FOOT_MM = 8;
    private static final double GAP_MM = 6;

    private final List<Way> ways;
    private final Heights heights;

    private RunProfile(List<Way> ways, Heights heights) {
        this.ways = ways;
        this.heights = heights;
    }

    public static RunProfile of(CommissioningRecord record, Evaluation evaluation, Figures figures) {
        List<PlacedPart> parts = PlacedParts.of(record, evaluation, Words.ENGLISH);
        return new RunProfile(Stream.of(Way.exhaust(record, parts), Way.of(Circuit.RAW_WATER, parts)).filter(Way::canBeDrawn).toList(),
            new Heights(figures, Water.about(record)));
    }

    /** The drawing; nothing when neither path has two places. */
    public Optional<Picture> picture(double widthMm, double heightMm) {
        if (ways.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Picture("Runs", widthMm, heightMm, graphics -> paint(graphics, widthMm, heightMm),
            "Heights along the runs. " + ways.stream().map(this::inWords).collect(Collectors.joining(" "))));
    }

    private String inWords(Way way) {
        return name(way) + ": " + way.stops().stream().map(this::heightInWords).collect(Collectors.joining(", ")) + ".";
    }

    private static String name(Way way) {
        return Words.ENGLISH.get(way.circuit().word());
    }

    private String heightInWords(Stop stop) {
        return stop.part().name() + " " + heightInWords(stop.heightM());
    }

    private void paint(Graphics2D graphics, double widthMm, double heightMm) {
        var pen = Pen.onPaper(graphics);
        double each = (heightMm - (ways.size() - 1) * GAP_MM) / ways.size();
        for (int index = 0; index < ways.size(); index++) {
            double top = index * (each + GAP_MM);
            paint(pen, ways.get(index), new Rectangle2D.Double(0, top, widthMm, each));
        }
    }

    private void paint(Pen pen, Way way, Rectangle2D area) {
        double longest = way.stops().getLast().alongM();
        double low = Math.min(0, way.stops().stream().mapToDouble(Stop::heightM).min().orElse(0));
        double high = Math.max(0, way.stops().stream().mapToDouble(Stop::heightM).max().orElse(0));
        double rim = Math.max((high - low) * 0.1, 0.05);
        var plot = new Rectangle2D.Double(area.getX() + LEFT_MM, area.getY() + NAMES_MM, area.getWidth() - LEFT_MM - RIGHT_MM,
            area.getHeight() - NAMES_MM - FOOT_MM);
        var axes = Axes.onPaper(plot, new double[] {0, Math.max(longest, 0.01)}, new double[] {low - rim, high + rim});
        pen.ink(Ink.INK).text(name(way), area.getX(), area.getY() + 3, Letters.BOLD_LEFT);
        pen.ink(Ink.SEA).fill(new Rectangle2D.Double(plot.getX(), axes.y(0), plot.getWidth(), plot.getMaxY() - axes.y(0)));
        pen.ink(Ink.WATER).width(Pen.FIRM).line(plot.getX(), axes.y(0), plot.getMaxX(), axes.y(0));
        pen.text("loaded waterline", plot.getMaxX(), axes.y(0) + 2.8, Letters.SMALL_RIGHT);
        axes.heights(pen, heights);
        axes.distances(pen, heights, Optional.of("along the run, straight from place to place"));
        var line = new Path2D.Double();
        way.stops().forEach(stop -> {
            if (line.getCurrentPoint() == null) {
                line.moveTo(axes.x(stop.alongM()), axes.y(stop.heightM()));
            } else {
                line.lineTo(axes.x(stop.alongM()), axes.y(stop.heightM()));
            }
        });
        Runs.stroke(pen, way.circuit());
        pen.draw(line);
        names(pen, way, axes, area.getY() + 4);
        way.stops().forEach(stop -> Marks.draw(pen, axes.x(stop.alongM()), axes.y(stop.heightM()), stop.part().worst().map(Verdict::standing)));
    }

    /** Names in a row above the plot, evenly pushed apart, each led down to its place. */
    private void names(Pen pen, Way way, Axes axes, double top) {
        int count = way.stops().size();
        double[] widths = new double[count];
        for (int index = 0; index < count; index++) {
            Stop stop = way.stops().get(index);
            widths[index] = Math.max(pen.widthOf(stop.part().name(), Letters.SMALL_LEFT), pen.widthOf(heightInWords(stop.heightM()), Letters.SMALL_LEFT)) + 3;
        }
        double[] lefts = spread(way, axes, widths);
        for (int index = 0; index < count; index++) {
            Stop stop = way.stops().get(index);
            double middle = lefts[index] + widths[index] / 2;
            pen.ink(Ink.INK).text(stop.part().name(), middle, top + 3.4, new Letters(Letters.SMALL, true, Letters.Anchor.CENTRE));
            pen.ink(Ink.FAINT).text(heightInWords(stop.heightM()), middle, top + 6.4, Letters.SMALL_CENTRE);
            stop.part().worst().ifPresent(verdict -> pen.ink(Ink.INK).text(verdict.standing().label(), middle, top + 9.4, Letters.SMALL_CENTRE));
            double foot = top + (stop.part().worst().isPresent() ? 10.2 : 7.2);
            pen.ink(Ink.FAINT).width(Pen.HAIR).line(middle, foot, axes.x(stop.alongM()), axes.y(stop.heightM()));
        }
    }

    private String heightInWords(double metres) {
        return heights.length(metres) + (metres < 0 ? " below" : " above");
    }

    private static double[] spread(Way way, Axes axes, double[] widths) {
        int count = widths.length;
        double[] lefts = new double[count];
        double free = axes.plot().getX() - LEFT_MM;
        for (int index = 0; index < count; index++) {
            lefts[index] = Math.max(free, axes.x(way.stops().get(index).alongM()) - widths[index] / 2);
            free = lefts[index] + widths[index];
        }
        double end = axes.plot().getMaxX() + RIGHT_MM;
        for (int index = count - 1; index >= 0; index--) {
            lefts[index] = Math.min(lefts[index], end - widths[index]);
            end = lefts[index];
        }
        return lefts;
    }
}
