// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.awt.Graphics2D;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * A drawing.
 *
 * @param name short name
 * @param widthMm width on paper in millimetres
 * @param heightMm height on paper in millimetres
 * @param painter draws it; one unit of the user space is one millimetre on paper, x to the right from 0 to the width, y downwards from 0
 *        to the height
 * @param alternative the same in words, for people who cannot see it
 */
public record Picture(String name, double widthMm, double heightMm, Consumer<Graphics2D> painter, String alternative) implements Block {
    public Picture {
        Objects.requireNonNull(painter, "painter");
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("A picture of " + widthMm + " by " + heightMm + " mm");
        }
    }
}
