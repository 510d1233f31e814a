// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Two axes of a plot and their ticks at round numbers. */
final class Axes {

    private static final int TICKS = 8;
    /** In a window no two ticks are nearer than this. */
    private static final double LINE_APART = 5;
    private static final double FIGURE_APART = 16;

    private final Rectangle2D plot;
    private final double[] across;
    private final double[] up;
    private final Words words;
    private final int ticksUp;
    private final int ticksAcross;

    /**
     * @param plot where on the paper
     * @param across least and greatest value from left to right
     * @param up least and greatest value from the foot to the top
     */
    static Axes onPaper(Rectangle2D plot, double[] across, double[] up) {
        return new Axes(plot, across, up, Words.ENGLISH, TICKS, TICKS);
    }

    /** The same in a window, with as many ticks as there is room for. */
    static Axes live(Rectangle2D plot, double[] across, double[] up, Words words) {
        return new Axes(plot, across, up, words, (int) Math.clamp(plot.getHeight() / LINE_APART, 2, TICKS),
            (int) Math.clamp(plot.getWidth() / FIGURE_APART, 2, TICKS));
    }

    private Axes(Rectangle2D plot, double[] across, double[] up, Words words, int ticksUp, int ticksAcross) {
        this.plot = plot;
        this.across = across.clone();
        this.up = up.clone();
        this.words = words;
        this.ticksUp = ticksUp;
        this.ticksAcross = ticksAcross;
    }

    Rectangle2D plot() {
        return plot;
    }

    double x(double value) {
        return plot.getX() + (value - across[0]) / (across[1] - across[0]) * plot.getWidth();
    }

    /** The value that stands at a place across. */
    double across(double x) {
        return across[0] + (x - plot.getX()) / plot.getWidth() * (across[1] - across[0]);
    }

    /** How much upwards a unit of the plot stands for. */
    double upEach() {
        return (up[1] - up[0]) / plot.getHeight();
    }

    double y(double value) {
        return plot.getMaxY() - (value - up[0]) / (up[1] - up[0]) * plot.getHeight();
    }

    /** Ticks and figures of heights at the left, with hair lines through the plot. */
    void heights(Pen pen, Heights heights) {
        double step = heights.roundStep((up[1] - up[0]) / ticksUp);
        for (double value = Math.ceil(up[0] / step) * step; value <= up[1] + step / 1e6; value += step) {
            double at = Math.abs(value) < step / 1e6 ? 0 : value;
            pen.ink(Ink.PALE).stroke(Pen.HAIR, Pen.DOTTED).line(plot.getX(), y(at), plot.getMaxX(), y(at));
            pen.ink(Ink.INK).text((at < 0 ? "\u2212" : "") + heights.length(at), plot.getX() - 1.2, y(at) + 0.8, Letters.SMALL_RIGHT);
        }
        pen.ink(Ink.FAINT).width(Pen.FINE).line(plot.getX(), plot.getY(), plot.getX(), plot.getMaxY());
    }

    /** Ticks and figures of distances below, and what they are. */
    void distances(Pen pen, Heights heights, Optional<String> caption) {
        double step = heights.roundStep((across[1] - across[0]) / ticksAcross);
        pen.ink(Ink.FAINT).width(Pen.FINE).line(plot.getX(), plot.getMaxY(), plot.getMaxX(), plot.getMaxY());
        for (double value = 0; value <= across[1] + step / 1e6; value += step) {
            pen.ink(Ink.FAINT).width(Pen.FINE).line(x(value), plot.getMaxY(), x(value), plot.getMaxY() + 1);
            pen.ink(Ink.INK).text(heights.length(value), x(value), plot.getMaxY() + 3.6, Letters.SMALL_CENTRE);
        }
        caption.ifPresent(text -> pen.ink(Ink.FAINT).text(text, plot.getMaxX(), plot.getMaxY() + 7, Letters.SMALL_RIGHT));
    }

    /** Ticks and figures of angles below. */
    void angles(Pen pen, double stepDegrees) {
        pen.ink(Ink.FAINT).width(Pen.FINE).line(plot.getX(), plot.getMaxY(), plot.getMaxX(), plot.getMaxY());
        for (double value = Math.ceil(across[0] / stepDegrees) * stepDegrees; value <= across[1] + 1e-6; value += stepDegrees) {
            pen.ink(Ink.PALE).stroke(Pen.HAIR, Pen.DOTTED).line(x(value), plot.getY(), x(value), plot.getMaxY());
            String figure = value == 0 ? words.get("axis.noHeel") : Math.round(Math.abs(value)) + "\u00b0";
            pen.ink(Ink.INK).text(figure, x(value), plot.getMaxY() + 3.6, Letters.SMALL_CENTRE);
        }
    }
}
