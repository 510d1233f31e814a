// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import garboard.quantity.Length;
import garboard.quantity.UnitSystem;

/**
 * Distances that come from a pointer, written as a person would: whole millimetres or eighths of an inch, in the unit and the manner in
 * which the distance was given before, with its accuracy.
 */
public final class Snap {

    private static final double INCH_M = 0.0254;
    private static final double EIGHTH_M = INCH_M / 8;
    private static final double[] MILLIMETRES = {1, 2, 5, 10, 20, 50};
    private static final double[] EIGHTHS = {1, 2, 4, 8, 16};

    /** How a distance is written. */
    private enum Manner {
        METRES("m", 3), CENTIMETRES("cm", 1), MILLIMETRES("mm", 0), INCHES("in", 3), INCHES_AND_EIGHTHS("in", 3), FEET("ft", 3);

        private final String unit;
        private final int decimals;

        Manner(String unit, int decimals) {
            this.unit = unit;
            this.decimals = decimals;
        }

        boolean customary() {
            return this == INCHES || this == INCHES_AND_EIGHTHS || this == FEET;
        }
    }

    private final Optional<Length> before;
    private final Manner manner;

    /**
     * @param before the distance as it was given, if it was
     * @param usual the units for one that was not given
     */
    public Snap(Optional<Length> before, UnitSystem usual) {
        this.before = before;
        this.manner = before.map(Snap::manner).orElse(usual == UnitSystem.US ? Manner.INCHES_AND_EIGHTHS : Manner.MILLIMETRES);
    }

    private static Manner manner(Length given) {
        String number = given.givenNumber();
        String unit = given.givenUnit();
        if (unit.equals("ft") || unit.equals("'") || number.contains("ft") || number.contains("'")) {
            return Manner.FEET;
        }
        if (unit.equals("in") || unit.equals("\"")) {
            return number.contains("/") ? Manner.INCHES_AND_EIGHTHS : Manner.INCHES;
        }
        return unit.equals("m") ? Manner.METRES : unit.equals("cm") ? Manner.CENTIMETRES : Manner.MILLIMETRES;
    }

    /** {@return the smallest step, in metres: a millimetre, an eighth of an inch} */
    public double finest() {
        return manner.customary() ? EIGHTH_M : 0.001;
    }

    /** {@return the larger step of a keyboard, in metres: ten millimetres, an inch} */
    public double coarse() {
        return manner.customary() ? INCH_M : 0.01;
    }

    /** {@return a step that a hand can hit, in metres: round, and no finer than half of what moves the pointer by one} */
    public double step(double metresPerPoint) {
        double finest = finest();
        double[] multiples = manner.customary() ? EIGHTHS : MILLIMETRES;
        for (double multiple : multiples) {
            if (multiple * finest >= metresPerPoint / 2) {
                return multiple * finest;
            }
        }
        return multiples[multiples.length - 1] * finest;
    }

    /** {@return the distance at a multiple of a step} */
    public Length at(double metres, double step) {
        return written(Math.rint(metres / step) * step);
    }

    /** {@return the next multiple of a step above a distance, or below it} @param direction 1 up, -1 down */
    public Length next(double metres, double step, int direction) {
        double steps = metres / step;
        double beside = direction > 0 ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1;
        return written(beside * step);
    }

    private Length written(double metres) {
        String text = switch (manner) {
            case FEET -> feet(metres);
            case INCHES_AND_EIGHTHS -> sign(metres) + eighths(Math.round(Math.abs(metres) / EIGHTH_M)) + " in";
            case INCHES -> decimal(metres / INCH_M) + " in";
            case METRES -> decimal(metres) + " m";
            case CENTIMETRES -> decimal(metres * 100) + " cm";
            case MILLIMETRES -> decimal(metres * 1000) + " mm";
        };
        Length length = Length.valueOf(text);
        return before.flatMap(Length::accuracy).map(length::withAccuracy).orElse(length);
    }

    /** As many decimals as the distance had before, more only where it needs them. */
    private String decimal(double number) {
        BigDecimal exact = BigDecimal.valueOf(number).setScale(manner.decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        int had = before.filter(given -> given.givenUnit().equals(manner.unit)).map(Length::givenNumber).map(Snap::decimals).orElse(0);
        BigDecimal shown = exact.setScale(Math.max(exact.scale(), Math.min(had, manner.decimals)), RoundingMode.UNNECESSARY);
        return shown.signum() == 0 ? shown.abs().toPlainString() : shown.toPlainString();
    }

    private static int decimals(String number) {
        int point = Math.max(number.indexOf('.'), number.indexOf(','));
        return point < 0 ? 0 : number.length() - point - 1;
    }

    private static String sign(double metres) {
        return Math.round(metres / EIGHTH_M) < 0 ? "-" : "";
    }

    private static String feet(double metres) {
        long eighths = Math.round(Math.abs(metres) / EIGHTH_M);
        long feet = eighths / 96;
        long rest = eighths % 96;
        String sign = sign(metres);
        if (rest == 0) {
            return sign + feet + " ft";
        }
        return sign + (feet == 0 ? "" : feet + " ft ") + eighths(rest) + " in";
    }

    private static String eighths(long eighths) {
        long whole = eighths / 8;
        long part = eighths % 8;
        if (part == 0) {
            return String.valueOf(whole);
        }
        long divisor = part % 4 == 0 ? 4 : part % 2 == 0 ? 2 : 1;
        String fraction = part / divisor + "/" + 8 / divisor;
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
