// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

import garboard.checks.Standing;

/** The mark of a part on a drawing: a shape of its own for each standing that a reader must know of. */
final class Marks {

    static final double HALF = 1.5;

    private Marks() {
    }

    static void draw(Pen pen, double x, double y, Optional<Standing> standing) {
        Standing shown = standing.orElse(Standing.MEETS);
        Ink ink = Ink.of(shown);
        switch (shown) {
            case CHECK_BROKE, FALLS_SHORT -> {
                pen.ink(ink).fill(new Rectangle2D.Double(x - HALF, y - HALF, 2 * HALF, 2 * HALF));
                pen.ink(Ink.BLANK).width(Pen.FIRM).line(x - 0.9, y - 0.9, x + 0.9, y + 0.9).line(x - 0.9, y + 0.9, x + 0.9, y - 0.9);
            }
            case BORDERLINE -> {
                pen.ink(Ink.BLANK).fill(diamond(x, y)).ink(ink).width(Pen.FINE).draw(diamond(x, y));
                pen.fill(new Rectangle2D.Double(x - 0.95, y - 0.25, 1.9, 0.5));
            }
            case ACCEPTED -> pen.ink(Ink.BLANK).fill(diamond(x, y)).ink(ink).width(Pen.FIRM).draw(diamond(x, y));
            case CANNOT_TELL -> {
                circle(pen, ink, x, y, HALF);
                pen.text("?", x, y + 0.85, new Letters(2.4, true, Letters.Anchor.CENTRE));
            }
            case MEETS, DOES_NOT_APPLY -> circle(pen, ink, x, y, HALF * 0.75);
        }
    }

    /** In a window, where a check that broke and a shortfall that was accepted stand beside others often enough to need a shape of their own. */
    static void drawLive(Pen pen, double x, double y, Optional<Standing> standing) {
        switch (standing.orElse(Standing.MEETS)) {
            case CHECK_BROKE -> {
                var square = new Rectangle2D.Double(x - HALF, y - HALF, 2 * HALF, 2 * HALF);
                pen.ink(Ink.BLANK).fill(square).ink(Ink.CHECK_BROKE).width(Pen.FINE).draw(square).width(Pen.FIRM)
                    .line(x - 0.8, y - 0.8, x + 0.8, y + 0.8).line(x - 0.8, y + 0.8, x + 0.8, y - 0.8);
            }
            case ACCEPTED -> {
                draw(pen, x, y, standing);
                pen.fill(new Ellipse2D.Double(x - 0.5, y - 0.5, 1, 1));
            }
            default -> draw(pen, x, y, standing);
        }
    }

    /** Around the mark of a part that is chosen or pointed at; broken where the keyboard does not act on it. */
    static void ring(Pen pen, double x, double y, String id, Emphasis emphasis) {
        if (emphasis.isChosen(id)) {
            double radius = HALF * 2.1;
            pen.ink(Ink.CHOSEN).stroke(emphasis.focused() ? Pen.FIRM : Pen.FINE, emphasis.focused() ? Pen.SOLID : Pen.DASHED)
                .draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
        } else if (emphasis.isPointedAt(id)) {
            double radius = HALF * 1.8;
            pen.ink(Ink.CHOSEN).width(Pen.FINE).draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
        }
    }

    private static void circle(Pen pen, Ink ink, double x, double y, double radius) {
        var circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        pen.ink(Ink.BLANK).fill(circle).ink(ink).width(Pen.FINE).draw(circle);
    }

    private static Path2D diamond(double x, double y) {
        var diamond = new Path2D.Double();
        double half = HALF * 1.25;
        diamond.moveTo(x, y - half);
        diamond.lineTo(x + half, y);
        diamond.lineTo(x, y + half);
        diamond.lineTo(x - half, y);
        diamond.closePath();
        return diamond;
    }
}
