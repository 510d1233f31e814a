// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Area;

/**
 * Size of a conductor as it is printed on the jacket: American wire gauge, square millimetres or thousand circular mils.
 * American gauges are geometric, the diameter being 0.127 mm x 92^((36 - n)/39) ({@link CableSources#AWG}); 1/0 to 4/0 are n = 0 to -3.
 *
 * @param series how the size is counted
 * @param number gauge n, mm2 or kcmil
 */
public record ConductorSize(Series series, double number) {

    /** Ways to count a conductor's size. */
    public enum Series {
        AWG, SQUARE_MILLIMETRE, KCMIL
    }

    /** Area of a circle of one thousandth of an inch. */
    static final double CIRCULAR_MIL_M2 = Math.PI / 4 * 25.4e-6 * 25.4e-6;

    private static final String RIGHT = "a size such as 10 AWG, 2/0 AWG, 70 mm2 or 350 kcmil";
    private static final int THICKEST_GAUGE = -3;
    private static final int THINNEST_GAUGE = 40;
    private static final Pattern OUGHT = Pattern.compile("(?:AWG\\s*)?(?:([1-4])/0|(0{1,4}))(?:\\s*AWG)?");
    private static final Pattern GAUGE = Pattern.compile("AWG\\s*(\\d+)|(\\d+)\\s*AWG");
    private static final Pattern METRIC = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*MM(?:2|\u00b2)");
    private static final Pattern MILS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:KCMIL|MCM)");

    public ConductorSize {
        boolean good = switch (series) {
            case AWG -> number == Math.rint(number) && number >= THICKEST_GAUGE && number <= THINNEST_GAUGE;
            case SQUARE_MILLIMETRE, KCMIL -> number > 0 && Double.isFinite(number);
        };
        if (!good) {
            throw OutOfRangeException.of("conductor size", number, RIGHT);
        }
    }

    /** American wire gauge n from 40 up to 0 (1/0) and on to -3 (4/0). */
    public static ConductorSize awg(int gauge) {
        return new ConductorSize(Series.AWG, gauge);
    }

    public static ConductorSize squareMillimetre(double areaMm2) {
        return new ConductorSize(Series.SQUARE_MILLIMETRE, areaMm2);
    }

    /** Reads a size; throws {@link OutOfRangeException} for anything else. A bare number is refused: 10 AWG is half of 10 mm2. */
    public static ConductorSize valueOf(String text) {
        String upper = text.strip().toUpperCase(Locale.ROOT);
        Matcher ought = OUGHT.matcher(upper);
        if (ought.matches()) {
            return awg(1 - (ought.group(1) != null ? Integer.parseInt(ought.group(1)) : ought.group(2).length()));
        }
        Matcher gauge = GAUGE.matcher(upper);
        if (gauge.matches()) {
            return awg(Integer.parseInt(gauge.group(1) != null ? gauge.group(1) : gauge.group(2)));
        }
        Matcher metric = METRIC.matcher(upper);
        if (metric.matches()) {
            return squareMillimetre(Double.parseDouble(metric.group(1)));
        }
        Matcher mils = MILS.matcher(upper);
        if (mils.matches()) {
            return new ConductorSize(Series.KCMIL, Double.parseDouble(mils.group(1)));
        }
        throw OutOfRangeException.of("conductor size", text, RIGHT);
    }

    /** Area of the copper; of an American gauge that of the solid wire. */
    public Area area() {
        return Area.of(switch (series) {
            case AWG -> Math.PI / 4 * Math.pow(0.127e-3 * Math.pow(92, (36 - number) / 39), 2);
            case SQUARE_MILLIMETRE -> number * 1e-6;
            case KCMIL -> number * 1000 * CIRCULAR_MIL_M2;
        });
    }

    /** Area in circular mils. */
    public double circularMils() {
        return area().si() / CIRCULAR_MIL_M2;
    }

    /** The size as it is read again by {@link #valueOf}, such as {@code 2/0 AWG}. */
    @Override
    public String toString() {
        String figure = number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
        return switch (series) {
            case AWG -> label() + " AWG";
            case SQUARE_MILLIMETRE -> figure + " mm2";
            case KCMIL -> figure + " kcmil";
        };
    }

    /** The gauge as tables print it: 10, 1/0, 4/0. */
    String label() {
        return number > 0 ? Long.toString((long) number) : (long) (1 - number) + "/0";
    }
}
