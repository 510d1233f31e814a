// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Shape;

/**
 * What a drawing is drawn on: a sheet of paper or a window. Lengths are in units of the drawing, x to the right, y down; a unit is a
 * millimetre on paper, and in a window what makes the letters as large as those around it. Shapes are pure geometry: nothing here needs a
 * display.
 */
public interface Board {

    /** @param rgb colour of what is drawn from now on */
    void ink(int rgb);

    /** @param dash lengths of dash and gap in turn; none for a full line */
    void stroke(double width, float[] dash);

    void draw(Shape shape);

    void fill(Shape shape);

    /** @param baseline where the letters stand */
    void text(String text, double left, double baseline, Letters letters);

    double widthOf(String text, Letters letters);

    /** Draws only inside the shape from now on, until {@link #everywhere()}. */
    void inside(Shape shape);

    void everywhere();
}
