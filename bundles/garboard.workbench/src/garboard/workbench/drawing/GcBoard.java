// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

import garboard.report.drawing.Board;
import garboard.report.drawing.Letters;

/**
 * A canvas: drawn with the window's own means, so that letters are those of the desktop and lines are sharp at any zoom. Only the geometry
 * of shapes is Java2D's, which needs neither a display nor a native library.
 */
final class GcBoard implements Board {

    private final GC gc;
    private final BoardFonts fonts;
    private final double unit;
    private final double zoom;
    private Color color;
    private double width = 1;

    /** @param zoom pixels of the device to a point */
    GcBoard(GC gc, BoardFonts fonts, double zoom) {
        this.gc = gc;
        this.fonts = fonts;
        this.unit = fonts.unit();
        this.zoom = zoom;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    @Override
    public void ink(int rgb) {
        color = new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
        gc.setForeground(color);
        gc.setBackground(color);
    }

    /** No line is thinner than a pixel. */
    @Override
    public void stroke(double inUnits, float[] dash) {
        width = Math.max(inUnits * unit, 1 / zoom);
        var attributes = new LineAttributes((float) width, SWT.CAP_FLAT, SWT.JOIN_ROUND);
        if (dash.length > 0) {
            attributes.style = SWT.LINE_CUSTOM;
            attributes.dash = new float[dash.length];
            for (int index = 0; index < dash.length; index++) {
                attributes.dash[index] = (float) Math.max(dash[index] * unit, 1 / zoom);
            }
        }
        gc.setLineAttributes(attributes);
    }

    @Override
    public void draw(Shape shape) {
        Path path = shape instanceof Line2D line ? straight(line) : path(shape);
        gc.drawPath(path);
        path.dispose();
    }

    /** Level and upright lines lie on the middle of pixels, or between them, as their width wants it. */
    private Path straight(Line2D line) {
        var path = new Path(gc.getDevice());
        boolean level = line.getY1() == line.getY2();
        boolean upright = line.getX1() == line.getX2();
        path.moveTo(on(line.getX1(), upright), on(line.getY1(), level));
        path.lineTo(on(line.getX2(), upright), on(line.getY2(), level));
        return path;
    }

    private float on(double inUnits, boolean sharp) {
        double points = inUnits * unit;
        if (!sharp) {
            return (float) points;
        }
        boolean odd = Math.round(width * zoom) % 2 == 1;
        return (float) ((odd ? Math.floor(points * zoom) + 0.5 : Math.rint(points * zoom)) / zoom);
    }

    @Override
    public void fill(Shape shape) {
        Path path = path(shape);
        gc.fillPath(path);
        path.dispose();
    }

    private Path path(Shape shape) {
        var path = new Path(gc.getDevice());
        float[] at = new float[6];
        double[] read = new double[6];
        for (PathIterator steps = shape.getPathIterator(null); !steps.isDone(); steps.next()) {
            int kind = steps.currentSegment(read);
            for (int index = 0; index < at.length; index++) {
                at[index] = (float) (read[index] * unit);
            }
            switch (kind) {
                case PathIterator.SEG_MOVETO -> path.moveTo(at[0], at[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(at[0], at[1]);
                case PathIterator.SEG_QUADTO -> path.quadTo(at[0], at[1], at[2], at[3]);
                case PathIterator.SEG_CUBICTO -> path.cubicTo(at[0], at[1], at[2], at[3], at[4], at[5]);
                default -> path.close();
            }
        }
        return path;
    }

    @Override
    public void text(String text, double left, double baseline, Letters letters) {
        BoardFonts.Sized sized = fonts.of(letters, gc);
        gc.setFont(sized.font());
        gc.drawString(text, (int) Math.round(left * unit), (int) Math.round(baseline * unit) - sized.ascent(), true);
    }

    @Override
    public double widthOf(String text, Letters letters) {
        return fonts.width(text, letters, gc) / unit;
    }

    @Override
    public void inside(Shape shape) {
        Rectangle2D box = shape.getBounds2D();
        int x = (int) Math.floor(box.getX() * unit);
        int y = (int) Math.floor(box.getY() * unit);
        gc.setClipping(x, y, (int) Math.ceil(box.getMaxX() * unit) - x, (int) Math.ceil(box.getMaxY() * unit) - y);
    }

    @Override
    public void everywhere() {
        gc.setClipping((Rectangle) null);
    }
}
