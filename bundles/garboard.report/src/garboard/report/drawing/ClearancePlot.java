// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.report.Figures;
import garboard.report.Picture;

/** Height above the water of the points that keep the sea out, against the heel from port to starboard. */
public final class ClearancePlot {

    private static final float[][] DASHES = {Pen.SOLID, Pen.DASH_DOT, Pen.LONG_DASH, Pen.DOTTED};
    private static final Ink[] INKS = {Ink.INK, Ink.EXHAUST, Ink.EMBER, Ink.WATER};
    private static final int STEPS = 60;
    private static final double LEFT_MM = 18;
    private static final double NAMES_MM = 60;
    private static final double NAMES_FROM_MM = 14.5;
    private static final double FOOT_MM = 10;
    private static final double HEAD_MM = 5;
    private static final double LINE_MM = 3.4;

    /** One curve: what it is of, heel in degrees and height in metres. */
    private record Curve(PlacedPart part, List<double[]> points) {
        double last() {
            return points.getLast()[1];
        }

        double least() {
            return points.stream().mapToDouble(point -> point[1]).min().orElse(0);
        }
    }

    private final List<Curve> curves;
    private final Water water;
    private final Heights heights;

    private ClearancePlot(List<Curve> curves, Water water, Heights heights) {
        this.curves = curves;
        this.water = water;
        this.heights = heights;
    }

    public static ClearancePlot of(CommissioningRecord record, Evaluation evaluation, Figures figures) {
        Water water = Water.about(record);
        var curves = new ArrayList<Curve>();
        if (water.heel().si() > 0) {
            List<PlacedPart> parts = PlacedParts.of(record, evaluation, Words.ENGLISH);
            for (String id : PlacedParts.KEEPERS) {
                parts.stream().filter(part -> part.id().equals(id)).findFirst()
                    .ifPresent(part -> part.place().ifPresent(place -> curves.add(new Curve(part, sweep(place, water)))));
            }
        }
        return new ClearancePlot(curves, water, new Heights(figures, water));
    }

    /** At each heel the height in the trim that brings the point lowest. */
    private static List<double[]> sweep(BoatPoint place, Water water) {
        var points = new ArrayList<double[]>();
        for (Attitude trimmed : water.trims()) {
            List<HeightAt> curve = HeeledHeight.curve(place, trimmed, water.heel(), STEPS);
            for (int index = 0; index < curve.size(); index++) {
                double height = curve.get(index).height().si();
                if (points.size() <= index) {
                    points.add(new double[] {Math.toDegrees(curve.get(index).attitude().heel().si()), height});
                } else {
                    points.get(index)[1] = Math.min(points.get(index)[1], height);
                }
            }
        }
        return points;
    }

    /** The plot; nothing when no heel is entered or none of the points has a place. */
    public Optional<Picture> picture(double widthMm, double heightMm) {
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Picture("Clearance against " + water.heelWord(), widthMm, heightMm, graphics -> paint(graphics, widthMm, heightMm),
            "Height above the water from " + heights.angle(water.heel()) + " " + water.heelWord() + " to port to as much to starboard. "
                + String.join(" ", curves.stream().map(this::inWords).toList())));
    }

    private String inWords(Curve curve) {
        double least = curve.least();
        return curve.part.name() + ": at the least " + heights.length(least) + (least < 0 ? " below the water." : " above the water.");
    }

    private void paint(Graphics2D graphics, double widthMm, double heightMm) {
        var pen = Pen.onPaper(graphics);
        var plot = new Rectangle2D.Double(LEFT_MM, HEAD_MM, widthMm - LEFT_MM - NAMES_MM, heightMm - HEAD_MM - FOOT_MM);
        double low = Math.min(0, curves.stream().mapToDouble(Curve::least).min().orElse(0));
        double high = curves.stream().flatMap(curve -> curve.points.stream()).mapToDouble(point -> point[1]).max().orElse(1);
        double rim = Math.max((Math.max(high, 0) - low) * 0.08, 0.02);
        double degrees = Math.toDegrees(water.heel().si());
        var axes = Axes.onPaper(plot, new double[] {-degrees, degrees}, new double[] {low - rim, Math.max(high, 0) + rim});
        pen.ink(Ink.SEA).fill(new Rectangle2D.Double(plot.getX(), axes.y(0), plot.getWidth(), plot.getMaxY() - axes.y(0)));
        pen.ink(Ink.WATER).width(Pen.FIRM).line(plot.getX(), axes.y(0), plot.getMaxX(), axes.y(0));
        pen.text("surface of the water", plot.getX() + 1.5, axes.y(0) + 3, Letters.SMALL_LEFT);
        axes.heights(pen, heights);
        axes.angles(pen, degrees > 20 ? 10 : 5);
        pen.ink(Ink.FAINT).text("\u25c4 " + water.heelWord() + " to port", plot.getX(), plot.getMaxY() + 8, Letters.SMALL_LEFT)
            .text(water.heelWord() + " to starboard \u25ba", plot.getMaxX(), plot.getMaxY() + 8, Letters.SMALL_RIGHT)
            .text("height above the water" + trimInWords(), plot.getX(), plot.getY() - 1.5, Letters.SMALL_LEFT);
        for (int index = 0; index < curves.size(); index++) {
            paint(pen, curves.get(index), axes, index);
        }
        names(pen, axes);
    }

    private String trimInWords() {
        return water.trim().si() > 0 ? ", in each heel at the worse of " + heights.angle(water.trim()) + " bow up, bow down and level" : "";
    }

    private static void paint(Pen pen, Curve curve, Axes axes, int index) {
        var path = new Path2D.Double();
        for (double[] point : curve.points) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(axes.x(point[0]), axes.y(point[1]));
            } else {
                path.lineTo(axes.x(point[0]), axes.y(point[1]));
            }
        }
        style(pen, index).draw(path);
    }

    static Pen style(Pen pen, int index) {
        return pen.ink(INKS[index % INKS.length]).stroke(Pen.FIRM * 1.3, DASHES[index % DASHES.length]);
    }

    /** Names at the right end of the curves, from the highest to the lowest, pushed apart. */
    private void names(Pen pen, Axes axes) {
        double free = axes.plot().getY();
        List<Curve> byHeight = curves.stream().sorted((one, other) -> Double.compare(other.last(), one.last())).toList();
        double room = axes.plot().getMaxY();
        for (int place = 0; place < byHeight.size(); place++) {
            Curve curve = byHeight.get(place);
            List<String> lines = lines(curve);
            double need = lines.size() * LINE_MM + 2;
            double below = byHeight.subList(place + 1, byHeight.size()).stream().mapToDouble(next -> lines(next).size() * LINE_MM + 2).sum();
            double top = Math.min(Math.max(free, axes.y(curve.last()) - LINE_MM / 2), room - below - need);
            double x = axes.plot().getMaxX();
            style(pen, curves.indexOf(curve)).line(x + 5, top + LINE_MM / 2, x + 13, top + LINE_MM / 2);
            pen.ink(Ink.FAINT).width(Pen.HAIR).line(x, axes.y(curve.last()), x + 5, top + LINE_MM / 2);
            for (int index = 0; index < lines.size(); index++) {
                pen.ink(index == 0 ? Ink.INK : Ink.FAINT)
                    .textWithin(NAMES_MM - NAMES_FROM_MM - 1, lines.get(index), x + NAMES_FROM_MM, top + LINE_MM * (index + 0.8), index == 0 ? Letters.BOLD_LEFT : Letters.SMALL_LEFT);
            }
            free = top + need;
        }
    }

    private List<String> lines(Curve curve) {
        var lines = new ArrayList<String>();
        lines.add(curve.part.name());
        curve.part.z().ifPresent(z -> lines.add("at rest " + told(z)));
        lines.add("lowest " + told(curve.least()));
        curve.part.worst().ifPresent(verdict -> lines.add(verdict.standing().label() + ": " + verdict.check().id()));
        return lines;
    }

    private String told(double metres) {
        return heights.length(metres) + (metres < 0 ? " below" : " above");
    }
}
