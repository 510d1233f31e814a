// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/** Loss coefficients of a sudden change of bore, both over the velocity in the narrow bore. Standard texts (Borda and Carnot), retrieved. */
public final class ChangeOfBore {

    private ChangeOfBore() {
    }

    /** A step from one bore to another. */
    public record Step(Length narrow, Length wide) {
        public Step {
            Argument.positive("narrow bore", narrow);
            if (wide.isLessThan(narrow)) {
                throw OutOfRangeException.of("wide bore", wide, "no less than the narrow bore, " + narrow);
            }
        }
    }

    /** Flow from the narrow bore into the wide one: K = (1 - (d/D)^2)^2. */
    public static Ratio expansion(Step step) {
        double left = 1 - areaRatio(step);
        return Ratio.of(left * left);
    }

    /** Flow from the wide bore into the narrow one: K = 0.5 (1 - (d/D)^2). */
    public static Ratio contraction(Step step) {
        return Ratio.of(0.5 * (1 - areaRatio(step)));
    }

    private static double areaRatio(Step step) {
        double ratio = step.narrow().si() / step.wide().si();
        return ratio * ratio;
    }
}
