// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws in millimetres of the paper: few line widths, one typeface. */
final class Pen {

    static final int INK = 0x1A1A1A;
    static final int FAINT = 0x5F666B;
    static final int PALE = 0xB9C0C5;
    static final int WATER = 0x1F5F8B;
    static final int FUEL = 0x7A5B12;
    static final int GROUND = 0xF1F5F8;

    static final double HAIR = 0.15;
    static final double FINE = 0.25;
    static final double FIRM = 0.5;
    static final double HEAVY = 1.1;

    static final float[] SOLID = {};
    static final float[] DASHED = {2.2f, 1.3f};
    static final float[] DOTTED = {0.4f, 0.9f};
    static final float[] DASH_DOT = {3f, 1f, 0.5f, 1f};
    static final float[] LONG_DASH = {4.5f, 1.5f};

    static final double SMALL = 2.3;
    static final double USUAL = 2.7;
    static final double LARGE = 3.2;

    enum Anchor {
        LEFT, CENTRE, RIGHT
    }

    private final Graphics2D graphics;

    Pen(Graphics2D graphics) {
        this.graphics = graphics;
    }

    Pen ink(int rgb) {
        graphics.setColor(new Color(rgb));
        return this;
    }

    Pen width(double mm) {
        return stroke(mm, SOLID);
    }

    Pen stroke(double mm, float[] dashMm) {
        graphics.setStroke(dashMm.length == 0 ? new BasicStroke((float) mm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
            : new BasicStroke((float) mm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashMm, 0));
        return this;
    }

    Pen line(double x1, double y1, double x2, double y2) {
        graphics.draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    Pen draw(Shape shape) {
        graphics.draw(shape);
        return this;
    }

    Pen fill(Shape shape) {
        graphics.fill(shape);
        return this;
    }

    /** A small arrow head with its point at the place, pointing along the direction. */
    Pen arrow(double x, double y, double directionX, double directionY) {
        double length = Math.hypot(directionX, directionY);
        double dx = directionX / length;
        double dy = directionY / length;
        var head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x - 1.6 * dx + 0.45 * dy, y - 1.6 * dy - 0.45 * dx);
        head.lineTo(x - 1.6 * dx - 0.45 * dy, y - 1.6 * dy + 0.45 * dx);
        head.closePath();
        return fill(head);
    }

    /** @param y base line of the text */
    Pen text(String text, double x, double y, Letters letters) {
        graphics.setFont(letters.font());
        double width = letters.anchor == Anchor.LEFT ? 0 : widthOf(text, letters);
        double left = letters.anchor == Anchor.LEFT ? x : letters.anchor == Anchor.CENTRE ? x - width / 2 : x - width;
        graphics.drawString(text, (float) left, (float) y);
        return this;
    }

    /** A text that must not be wider than there is room for: in smaller letters where it would be. */
    Pen textWithin(double mostMm, String text, double x, double y, Letters letters) {
        double width = widthOf(text, letters);
        return text(text, x, y, width <= mostMm ? letters : new Letters(letters.sizeMm * mostMm / width, letters.bold, letters.anchor));
    }

    double widthOf(String text, Letters letters) {
        return letters.font().getStringBounds(text, graphics.getFontRenderContext()).getWidth();
    }

    /** Only inside the shape from here on, until {@link #everywhere()}. */
    Pen inside(Shape shape) {
        graphics.setClip(shape);
        return this;
    }

    Pen everywhere() {
        graphics.setClip(null);
        return this;
    }

    /** Size in millimetres, weight and what the given place is to the text. */
    record Letters(double sizeMm, boolean bold, Anchor anchor) {

        static final Letters SMALL_LEFT = new Letters(SMALL, false, Anchor.LEFT);
        static final Letters SMALL_CENTRE = new Letters(SMALL, false, Anchor.CENTRE);
        static final Letters SMALL_RIGHT = new Letters(SMALL, false, Anchor.RIGHT);
        static final Letters BOLD_LEFT = new Letters(USUAL, true, Anchor.LEFT);
        static final Letters BOLD_RIGHT = new Letters(USUAL, true, Anchor.RIGHT);

        Font font() {
            return new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) sizeMm);
        }
    }
}
