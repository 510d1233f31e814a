// SPDX-License-Identifier: EPL-2.0
package garboard.physics.reference;

import java.util.Comparator;
import java.util.stream.IntStream;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/** Straight lines between the points of a table. It knows its range and never leaves it: who asks outside gets an exception. */
public final class Interpolation {

    private final PolynomialSplineFunction line;
    private final double lowest;
    private final double highest;

    /** Points in any order of the abscissa; no two of the same abscissa. */
    public Interpolation(double[] abscissae, double[] ordinates) {
        int[] order = IntStream.range(0, abscissae.length).boxed().sorted(Comparator.comparingDouble(i -> abscissae[i])).mapToInt(i -> i).toArray();
        double[] x = IntStream.of(order).mapToDouble(i -> abscissae[i]).toArray();
        double[] y = IntStream.of(order).mapToDouble(i -> ordinates[i]).toArray();
        line = new LinearInterpolator().interpolate(x, y);
        lowest = x[0];
        highest = x[x.length - 1];
    }

    public double lowest() {
        return lowest;
    }

    public double highest() {
        return highest;
    }

    /** True where the table has a figure; the ends belong to it, a rounding error of unit conversion (1e-9 of the span) included. */
    public boolean covers(double abscissa) {
        double slack = 1e-9 * (highest - lowest);
        return abscissa >= lowest - slack && abscissa <= highest + slack;
    }

    /** Ordinate at an abscissa the table {@linkplain #covers covers}; {@link IllegalArgumentException} elsewhere. */
    public double at(double abscissa) {
        if (!covers(abscissa)) {
            throw new IllegalArgumentException(abscissa + " is outside the table, which runs from " + lowest + " to " + highest);
        }
        return line.value(Math.clamp(abscissa, lowest, highest));
    }
}
