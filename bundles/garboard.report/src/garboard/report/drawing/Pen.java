// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

import garboard.report.drawing.Letters.Anchor;

/** Draws with a set of inks and few line widths. Lengths are those of the board: millimetres on paper. */
final class Pen {

    static final double HAIR = 0.15;
    static final double FINE = 0.25;
    static final double FIRM = 0.5;
    static final double HEAVY = 1.1;

    static final float[] SOLID = {};
    static final float[] DASHED = {2.2f, 1.3f};
    static final float[] DOTTED = {0.4f, 0.9f};
    static final float[] DASH_DOT = {3f, 1f, 0.5f, 1f};
    static final float[] LONG_DASH = {4.5f, 1.5f};

    private final Board board;
    private final Inks inks;

    Pen(Board board, Inks inks) {
        this.board = board;
        this.inks = inks;
    }

    static Pen onPaper(Graphics2D graphics) {
        return new Pen(new PaperBoard(graphics), Inks.PAPER);
    }

    Pen ink(Ink ink) {
        board.ink(inks.rgb(ink));
        return this;
    }

    Pen width(double mm) {
        return stroke(mm, SOLID);
    }

    Pen stroke(double mm, float[] dashMm) {
        board.stroke(mm, dashMm);
        return this;
    }

    Pen line(double x1, double y1, double x2, double y2) {
        board.draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    Pen draw(Shape shape) {
        board.draw(shape);
        return this;
    }

    Pen fill(Shape shape) {
        board.fill(shape);
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
        double width = letters.anchor() == Anchor.LEFT ? 0 : widthOf(text, letters);
        board.text(text, letters.anchor() == Anchor.LEFT ? x : letters.anchor() == Anchor.CENTRE ? x - width / 2 : x - width, y, letters);
        return this;
    }

    /** A text that must not be wider than there is room for: in smaller letters where it would be. */
    Pen textWithin(double mostMm, String text, double x, double y, Letters letters) {
        double width = widthOf(text, letters);
        return text(text, x, y, width <= mostMm ? letters : letters.of(letters.size() * mostMm / width));
    }

    double widthOf(String text, Letters letters) {
        return board.widthOf(text, letters);
    }

    /** Only inside the shape from here on, until {@link #everywhere()}. */
    Pen inside(Shape shape) {
        board.inside(shape);
        return this;
    }

    Pen everywhere() {
        board.everywhere();
        return this;
    }
}
