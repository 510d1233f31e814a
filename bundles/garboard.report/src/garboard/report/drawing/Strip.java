// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Short pieces of text one after the other in few lines; some can be pointed at. What has no room is left out, and how many is said. */
final class Strip {

    static final double LINE = 3.7;
    private static final double GAP = 3;
    private static final double SYMBOL_GAP = 1.2;

    /** Draws a sign before a text. */
    interface Symbol {
        /** @param y the middle of the line */
        void draw(Pen pen, double left, double y);
    }

    /**
     * A piece.
     *
     * @param text what is read
     * @param ink of the text
     * @param bold whether it stands out
     * @param symbol before it, and how wide that is; none where the width is 0
     * @param target what it points at, if anything; its place is found here
     */
    record Piece(String text, Ink ink, boolean bold, double symbolWidth, Symbol symbol, Optional<Spot> target) {
        static Piece of(String text, Ink ink, boolean bold) {
            return new Piece(text, ink, bold, 0, (pen, left, y) -> { }, Optional.empty());
        }

        static Piece to(Spot target, String text, Ink ink, boolean bold) {
            return new Piece(text, ink, bold, 0, (pen, left, y) -> { }, Optional.of(target));
        }

        static Piece with(double width, Symbol symbol, String text) {
            return new Piece(text, Ink.FAINT, false, width, symbol, Optional.empty());
        }

        private Letters letters() {
            return Letters.SMALL_LEFT.bold(bold);
        }

        private double width(Pen pen) {
            return (symbolWidth > 0 ? symbolWidth + SYMBOL_GAP : 0) + pen.widthOf(text, letters());
        }
    }

    private record Laid(Piece piece, Rectangle2D box) {
    }

    private final List<Laid> laid = new ArrayList<>();
    private final Rectangle2D area;

    /**
     * @param left of the first line
     * @param top of the first line
     * @param more what is said of pieces left out, with their number
     */
    Strip(List<Piece> pieces, Point2D leftTop, double width, int mostLines, java.util.function.IntFunction<String> more, Pen pen) {
        double x = leftTop.getX();
        double end = leftTop.getX() + width;
        int line = 0;
        int index = 0;
        for (; index < pieces.size(); index++) {
            Piece piece = pieces.get(index);
            double wide = piece.width(pen);
            boolean lastLine = line == mostLines - 1;
            int left = pieces.size() - index;
            double reserve = lastLine && left > 1 ? pen.widthOf(more.apply(left), Letters.SMALL_LEFT) + GAP : 0;
            if (x + wide + reserve > end && x > leftTop.getX()) {
                if (lastLine) {
                    break;
                }
                line++;
                x = leftTop.getX();
            }
            laid.add(new Laid(piece, new Rectangle2D.Double(x, leftTop.getY() + line * LINE, wide, LINE)));
            x += wide + GAP;
        }
        if (index < pieces.size()) {
            Piece rest = Piece.of(more.apply(pieces.size() - index), Ink.FAINT, false);
            laid.add(new Laid(rest, new Rectangle2D.Double(x, leftTop.getY() + line * LINE, rest.width(pen), LINE)));
        }
        area = new Rectangle2D.Double(leftTop.getX(), leftTop.getY(), width, pieces.isEmpty() ? 0 : (line + 1) * LINE);
    }

    double height() {
        return area.getHeight();
    }

    void paint(Pen pen, Emphasis emphasis) {
        for (Laid one : laid) {
            Piece piece = one.piece;
            double x = one.box.getX();
            if (piece.symbolWidth > 0) {
                piece.symbol.draw(pen, x, one.box.getCenterY());
                x += piece.symbolWidth + SYMBOL_GAP;
            }
            boolean chosen = piece.target.filter(spot -> emphasis.isChosen(spot.id())).isPresent();
            boolean pointedAt = piece.target.filter(spot -> emphasis.isPointedAt(spot.id())).isPresent();
            double base = one.box.getY() + LINE * 0.72;
            pen.ink(chosen || pointedAt ? Ink.CHOSEN : piece.ink).text(piece.text, x, base, piece.letters());
            if (pointedAt || chosen && emphasis.focused()) {
                pen.width(Pen.FINE).line(x, base + 0.6, one.box.getMaxX(), base + 0.6);
            }
        }
    }

    /** What can be pointed at, with the areas where it stands. */
    List<Spot> spots() {
        return laid.stream().filter(one -> one.piece.target.isPresent()).map(one -> {
            Spot target = one.piece.target.orElseThrow();
            return new Spot(target.id(), target.name(), target.field(), Optional.empty(), Optional.of(one.box));
        }).toList();
    }
}
