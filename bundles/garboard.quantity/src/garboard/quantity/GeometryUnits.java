// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.TradeUnits.CENTIMETRE;
import static garboard.quantity.TradeUnits.CIRCULAR_MIL;
import static garboard.quantity.TradeUnits.CUBIC_METRE;
import static garboard.quantity.TradeUnits.DEGREE;
import static garboard.quantity.TradeUnits.FLUID_OUNCE;
import static garboard.quantity.TradeUnits.FOOT;
import static garboard.quantity.TradeUnits.GALLON;
import static garboard.quantity.TradeUnits.INCH;
import static garboard.quantity.TradeUnits.LITRE;
import static garboard.quantity.TradeUnits.METRE;
import static garboard.quantity.TradeUnits.MILLIMETRE;
import static garboard.quantity.TradeUnits.NAUTICAL_MILE;
import static garboard.quantity.TradeUnits.ONE;
import static garboard.quantity.TradeUnits.PINT;
import static garboard.quantity.TradeUnits.QUART;
import static garboard.quantity.TradeUnits.RADIAN;
import static garboard.quantity.TradeUnits.SQUARE_METRE;
import static garboard.quantity.TradeUnits.STATUTE_MILE;
import static garboard.quantity.TradeUnits.YARD;
import static garboard.quantity.TradeUnits.times;

/** Units of length, area, volume, angle and slope. */
final class GeometryUnits {

    static final UnitTable LENGTH = UnitTable.of("length", "m", METRE)
        .unit("mm", MILLIMETRE)
        .unit("cm", CENTIMETRE)
        .unit("m", METRE)
        .unit("in", INCH, "inch", "inches", "\"")
        .unit("ft", FOOT, "foot", "feet", "'")
        .unit("yd", YARD)
        .unit("um", times(METRE, "0.000001"))
        .unit("km", times(METRE, "1000"))
        .unit("nmi", NAUTICAL_MILE)
        .unit("mi", STATUTE_MILE)
        .unit("mil", times(INCH, "0.001"), "thou")
        .shownIn("mm", "in");

    static final UnitTable AREA = UnitTable.of("area", "m2", SQUARE_METRE)
        .unit("mm2", MILLIMETRE.pow(2))
        .unit("cm2", CENTIMETRE.pow(2))
        .unit("m2", SQUARE_METRE)
        .unit("in2", INCH.pow(2), "sq in", "sqin")
        .unit("ft2", FOOT.pow(2), "sq ft", "sqft")
        .unit("cmil", CIRCULAR_MIL)
        .unit("kcmil", times(CIRCULAR_MIL, "1000"), "MCM")
        .shownIn("cm2", "in2");

    static final UnitTable VOLUME = UnitTable.of("volume", "m3", CUBIC_METRE)
        .unit("L", LITRE, "l")
        .unit("mL", times(LITRE, "0.001"), "ml")
        .unit("m3", CUBIC_METRE)
        .unit("gal", GALLON, "US gal")
        .unit("ft3", FOOT.pow(3), "cu ft", "cuft")
        .unit("in3", INCH.pow(3), "cu in", "cuin")
        .unit("cm3", CENTIMETRE.pow(3), "cc")
        .unit("qt", QUART)
        .unit("pt", PINT)
        .unit("fl oz", FLUID_OUNCE)
        .shownIn("L", "gal");

    static final UnitTable ANGLE = UnitTable.of("angle", "rad", RADIAN)
        .unit("deg", DEGREE)
        .unit("rad", RADIAN)
        .shownIn("deg", "deg");

    static final UnitTable SLOPE = UnitTable.of("slope", "1", ONE)
        .unit("mm/m", times(ONE, "0.001"))
        .unit("in/ft", INCH.divide(FOOT))
        .unit("%", times(ONE, "0.01"))
        .degreesOfSlope("deg")
        .unit("1", ONE, "m/m")
        .shownIn("mm/m", "in/ft");

    private GeometryUnits() {
    }
}
