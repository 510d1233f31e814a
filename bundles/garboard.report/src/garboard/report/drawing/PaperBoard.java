// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;

/** Paper: Java2D, whose user space is in millimetres. */
final class PaperBoard implements Board {

    private final Graphics2D graphics;

    PaperBoard(Graphics2D graphics) {
        this.graphics = graphics;
    }

    @Override
    public void ink(int rgb) {
        graphics.setColor(new Color(rgb));
    }

    @Override
    public void stroke(double width, float[] dash) {
        graphics.setStroke(dash.length == 0 ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
            : new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
    }

    @Override
    public void draw(Shape shape) {
        graphics.draw(shape);
    }

    @Override
    public void fill(Shape shape) {
        graphics.fill(shape);
    }

    @Override
    public void text(String text, double left, double baseline, Letters letters) {
        graphics.setFont(font(letters));
        graphics.drawString(text, (float) left, (float) baseline);
    }

    @Override
    public double widthOf(String text, Letters letters) {
        return font(letters).getStringBounds(text, graphics.getFontRenderContext()).getWidth();
    }

    @Override
    public void inside(Shape shape) {
        graphics.setClip(shape);
    }

    @Override
    public void everywhere() {
        graphics.setClip(null);
    }

    private static Font font(Letters letters) {
        return new Font(Font.SANS_SERIF, letters.bold() ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) letters.size());
    }
}
