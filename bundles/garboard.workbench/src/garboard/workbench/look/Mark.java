// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;

import garboard.checks.Standing;

/**
 * The mark of a standing: a shape of its own for each, the same as on the drawings of the report. The colour only helps. What needs action
 * is heavy, what is met is light.
 */
public final class Mark {

    private Mark() {
    }

    /** Draws a mark into a square. */
    public static void draw(GC gc, Palette palette, Standing standing, int x, int y, int size) {
        draw(gc, palette.of(standing), palette.sheet(), standing, x, y, size);
    }

    /** Draws a mark in a colour of choice. @param inside what is drawn into a filled shape */
    public static void draw(GC gc, Color colour, Color inside, Standing standing, int x, int y, int size) {
        Color foreground = gc.getForeground();
        Color background = gc.getBackground();
        LineAttributes lines = gc.getLineAttributes();
        gc.setAntialias(SWT.ON);
        new Brush(gc, colour, inside, x + size / 2f, y + size / 2f, size / 2f).draw(standing);
        gc.setForeground(foreground);
        gc.setBackground(background);
        gc.setLineAttributes(lines);
    }

    /** {@return a mark as an image on nothing, sharp at any zoom, to be disposed by who asked} */
    public static Image image(Device device, Palette palette, Standing standing, int size) {
        return new Image(device, (gc, width, height) -> draw(gc, palette, standing, 0, 0, size), size, size);
    }

    /** Draws around a middle. */
    private record Brush(GC gc, Color colour, Color inside, float x, float y, float half) {

        void draw(Standing standing) {
            gc.setForeground(colour);
            gc.setBackground(colour);
            switch (standing) {
                case FALLS_SHORT -> {
                    shape(square(0.78f), true);
                    gc.setForeground(inside);
                    cross(0.42f, 0.24f);
                }
                case CHECK_BROKE -> {
                    shape(square(0.74f), false);
                    cross(0.42f, 0.2f);
                }
                case BORDERLINE -> {
                    shape(diamond(0.92f), false);
                    line(-0.4f, 0, 0.4f, 0, 0.26f);
                }
                case CANNOT_TELL -> {
                    shape(circle(0.82f), false);
                    question();
                }
                case ACCEPTED -> {
                    shape(diamond(0.92f), false);
                    shape(circle(0.24f), true);
                }
                case MEETS -> shape(circle(0.5f), false);
                case DOES_NOT_APPLY -> line(-0.45f, 0, 0.45f, 0, 0.2f);
            }
        }

        private void shape(Path path, boolean filled) {
            if (filled) {
                gc.fillPath(path);
            } else {
                gc.setLineAttributes(new LineAttributes(half * 0.2f, SWT.CAP_FLAT, SWT.JOIN_MITER));
                gc.drawPath(path);
            }
            path.dispose();
        }

        private void line(float fromX, float fromY, float toX, float toY, float width) {
            gc.setLineAttributes(new LineAttributes(half * width, SWT.CAP_FLAT, SWT.JOIN_MITER));
            var path = new Path(gc.getDevice());
            path.moveTo(x + fromX * half, y + fromY * half);
            path.lineTo(x + toX * half, y + toY * half);
            gc.drawPath(path);
            path.dispose();
        }

        private void cross(float reach, float width) {
            line(-reach, -reach, reach, reach, width);
            line(-reach, reach, reach, -reach, width);
        }

        private void question() {
            gc.setLineAttributes(new LineAttributes(half * 0.2f, SWT.CAP_FLAT, SWT.JOIN_ROUND));
            var hook = new Path(gc.getDevice());
            float radius = half * 0.26f;
            hook.addArc(x - radius, y - half * 0.5f, 2 * radius, 2 * radius, 170, -230);
            hook.quadTo(x, y + half * 0.02f, x, y + half * 0.24f);
            gc.drawPath(hook);
            hook.dispose();
            var dot = new Path(gc.getDevice());
            dot.addArc(x - half * 0.12f, y + half * 0.33f, half * 0.24f, half * 0.24f, 0, 360);
            gc.fillPath(dot);
            dot.dispose();
        }

        private Path square(float reach) {
            var path = new Path(gc.getDevice());
            path.addRectangle(x - reach * half, y - reach * half, 2 * reach * half, 2 * reach * half);
            return path;
        }

        private Path circle(float reach) {
            var path = new Path(gc.getDevice());
            path.addArc(x - reach * half, y - reach * half, 2 * reach * half, 2 * reach * half, 0, 360);
            path.close();
            return path;
        }

        private Path diamond(float reach) {
            var path = new Path(gc.getDevice());
            path.moveTo(x, y - reach * half);
            path.lineTo(x + reach * half, y);
            path.lineTo(x, y + reach * half);
            path.lineTo(x - reach * half, y);
            path.close();
            return path;
        }
    }
}
