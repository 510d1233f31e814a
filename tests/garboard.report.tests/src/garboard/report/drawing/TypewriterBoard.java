// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;

/** A board that draws nothing and whose letters are all equally wide, so that a layout does not hang on the fonts of a machine. */
final class TypewriterBoard implements Board {

    private final List<String> texts = new ArrayList<>();
    private final List<Integer> inks = new ArrayList<>();

    /** {@return what was written, in its order} */
    List<String> texts() {
        return texts;
    }

    List<Integer> inks() {
        return inks;
    }

    @Override
    public void ink(int rgb) {
        inks.add(rgb);
    }

    @Override
    public void stroke(double width, float[] dash) {
    }

    @Override
    public void draw(Shape shape) {
    }

    @Override
    public void fill(Shape shape) {
    }

    @Override
    public void text(String text, double left, double baseline, Letters letters) {
        texts.add(text);
    }

    @Override
    public double widthOf(String text, Letters letters) {
        return text.length() * letters.size() * 0.6;
    }

    @Override
    public void inside(Shape shape) {
    }

    @Override
    public void everywhere() {
    }
}
