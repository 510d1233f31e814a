// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;

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
        int lines = gc.getLineWidth();
        gc.setAntialias(SWT.ON);
        new Brush(gc, colour, inside, x + size / 2, y + size / 2, size / 2).draw(standing);
        gc.setForeground(foreground);
        gc.setBackground(background);
        gc.setLineWidth(lines);
    }

    /** {@return a mark as an image on nothing, sharp at any zoom, to be disposed by who asked} */
    public static Image image(Device device, Palette palette, Standing standing, int size) {
        return new Image(device, new ImageGcDrawer() {
            @Override
            public void drawOn(GC gc, int width, int height) {
                draw(gc, palette, standing, 0, 0, size);
            }

            @Override
            public int getGcStyle() {
                return SWT.TRANSPARENT;
            }
        }, size, size);
    }

    /** Draws around a middle, with whole points and plain shapes: there are hundreds of marks in a window, and paths are slow on GTK. */
    private record Brush(GC gc, Color colour, Color inside, int x, int y, int half) {

        void draw(Standing standing) {
            gc.setForeground(colour);
            gc.setBackground(colour);
            gc.setLineWidth(Math.max(1, Math.round(half * 0.22f)));
            switch (standing) {
                case FALLS_SHORT -> {
                    int reach = part(0.8f);
                    gc.fillRectangle(x - reach, y - reach, 2 * reach, 2 * reach);
                    gc.setForeground(inside);
                    cross(part(0.42f));
                }
                case CHECK_BROKE -> {
                    int reach = part(0.76f);
                    gc.drawRectangle(x - reach, y - reach, 2 * reach, 2 * reach);
                    cross(part(0.4f));
                }
                case BORDERLINE -> {
                    diamond();
                    gc.drawLine(x - part(0.38f), y, x + part(0.38f), y);
                }
                case CANNOT_TELL -> {
                    int reach = part(0.84f);
                    gc.drawOval(x - reach, y - reach, 2 * reach, 2 * reach);
                    question();
                }
                case ACCEPTED -> {
                    diamond();
                    int reach = Math.max(1, part(0.26f));
                    gc.fillOval(x - reach, y - reach, 2 * reach, 2 * reach);
                }
                case MEETS -> {
                    int reach = part(0.5f);
                    gc.drawOval(x - reach, y - reach, 2 * reach, 2 * reach);
                }
                case DOES_NOT_APPLY -> gc.drawLine(x - part(0.45f), y, x + part(0.45f), y);
            }
        }

        private int part(float share) {
            return Math.round(half * share);
        }

        private void cross(int reach) {
            gc.drawLine(x - reach, y - reach, x + reach, y + reach);
            gc.drawLine(x - reach, y + reach, x + reach, y - reach);
        }

        private void diamond() {
            int reach = part(0.94f);
            gc.drawPolygon(new int[] {x, y - reach, x + reach, y, x, y + reach, x - reach, y});
        }

        private void question() {
            int radius = Math.max(1, part(0.26f));
            int top = y - part(0.5f);
            gc.drawArc(x - radius, top, 2 * radius, 2 * radius, -90, 270);
            gc.drawLine(x, top + 2 * radius - part(0.06f), x, y + part(0.2f));
            int dot = Math.max(1, part(0.13f));
            gc.fillOval(x - dot, y + part(0.42f), 2 * dot, 2 * dot);
        }
    }
}
