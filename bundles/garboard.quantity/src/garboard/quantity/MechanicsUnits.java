// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.TradeUnits.CENTIMETRE;
import static garboard.quantity.TradeUnits.CUBIC_METRE;
import static garboard.quantity.TradeUnits.DAY;
import static garboard.quantity.TradeUnits.FOOT;
import static garboard.quantity.TradeUnits.GALLON;
import static garboard.quantity.TradeUnits.GRAM;
import static garboard.quantity.TradeUnits.HERTZ;
import static garboard.quantity.TradeUnits.HOUR;
import static garboard.quantity.TradeUnits.KILOGRAM;
import static garboard.quantity.TradeUnits.KILOGRAM_FORCE;
import static garboard.quantity.TradeUnits.KNOT;
import static garboard.quantity.TradeUnits.LITRE;
import static garboard.quantity.TradeUnits.METRE;
import static garboard.quantity.TradeUnits.MILLIMETRE;
import static garboard.quantity.TradeUnits.MINUTE;
import static garboard.quantity.TradeUnits.NEWTON;
import static garboard.quantity.TradeUnits.OUNCE;
import static garboard.quantity.TradeUnits.PASCAL;
import static garboard.quantity.TradeUnits.POUND;
import static garboard.quantity.TradeUnits.POUND_FORCE;
import static garboard.quantity.TradeUnits.RADIAN;
import static garboard.quantity.TradeUnits.REVOLUTION;
import static garboard.quantity.TradeUnits.SECOND;
import static garboard.quantity.TradeUnits.SQUARE_METRE;
import static garboard.quantity.TradeUnits.STATUTE_MILE;
import static garboard.quantity.TradeUnits.times;

import javax.measure.Unit;

/** Units of mass, force, density, viscosity, time and motion. */
final class MechanicsUnits {

    private static final Unit<?> PASCAL_SECOND = PASCAL.multiply(SECOND);

    static final UnitTable MASS = UnitTable.of("mass", "kg", KILOGRAM)
        .unit("kg", KILOGRAM)
        .unit("g", GRAM)
        .unit("t", times(KILOGRAM, "1000"))
        .unit("lb", POUND, "lbs")
        .unit("oz", OUNCE)
        .shownIn("kg", "lb");

    static final UnitTable FORCE = UnitTable.of("force", "N", NEWTON)
        .unit("N", NEWTON)
        .unit("kN", times(NEWTON, "1000"))
        .unit("lbf", POUND_FORCE)
        .unit("kgf", KILOGRAM_FORCE)
        .shownIn("N", "lbf");

    static final UnitTable DENSITY = UnitTable.of("density", "kg/m3", KILOGRAM.divide(CUBIC_METRE))
        .unit("kg/m3", KILOGRAM.divide(CUBIC_METRE))
        .unit("kg/L", KILOGRAM.divide(LITRE), "kg/l")
        .unit("g/cm3", GRAM.divide(CENTIMETRE.pow(3)))
        .unit("lb/ft3", POUND.divide(FOOT.pow(3)))
        .unit("lb/gal", POUND.divide(GALLON))
        .shownIn("kg/m3", "lb/ft3");

    static final UnitTable KINEMATIC_VISCOSITY =
        UnitTable.of("kinematic viscosity", "m2/s", SQUARE_METRE.divide(SECOND))
            .unit("mm2/s", MILLIMETRE.pow(2).divide(SECOND))
            .unit("cSt", MILLIMETRE.pow(2).divide(SECOND))
            .unit("m2/s", SQUARE_METRE.divide(SECOND))
            .unit("ft2/s", FOOT.pow(2).divide(SECOND))
            .shownIn("mm2/s", "cSt");

    static final UnitTable DYNAMIC_VISCOSITY = UnitTable.of("dynamic viscosity", "Pa.s", PASCAL_SECOND)
        .unit("mPa.s", times(PASCAL_SECOND, "0.001"))
        .unit("cP", times(PASCAL_SECOND, "0.001"))
        .unit("Pa.s", PASCAL_SECOND)
        .shownIn("mPa.s", "cP");

    static final UnitTable TIME_SPAN = UnitTable.of("time span", "s", SECOND)
        .unit("s", SECOND, "sec")
        .unit("min", MINUTE)
        .unit("h", HOUR, "hr")
        .unit("d", DAY, "day", "days")
        .unit("ms", times(SECOND, "0.001"))
        .shownIn("s", "s");

    static final UnitTable SPEED = UnitTable.of("speed", "m/s", METRE.divide(SECOND))
        .unit("m/s", METRE.divide(SECOND))
        .unit("km/h", times(METRE, "1000").divide(HOUR))
        .unit("kn", KNOT, "kt", "kts")
        .unit("ft/s", FOOT.divide(SECOND), "fps")
        .unit("ft/min", FOOT.divide(MINUTE), "fpm")
        .unit("m/min", METRE.divide(MINUTE))
        .unit("mi/h", STATUTE_MILE.divide(HOUR), "mph")
        .shownIn("m/s", "ft/s");

    static final UnitTable FREQUENCY = UnitTable.of("frequency", "Hz", HERTZ)
        .unit("Hz", HERTZ)
        .unit("kHz", times(HERTZ, "1000"))
        .unit("mHz", times(HERTZ, "0.001"))
        .shownIn("Hz", "Hz");

    static final UnitTable ROTATIONAL_SPEED = UnitTable.of("rotational speed", "rad/s", RADIAN.divide(SECOND))
        .unit("r/min", REVOLUTION.divide(MINUTE), "rpm")
        .unit("r/s", REVOLUTION.divide(SECOND), "rps")
        .unit("rad/s", RADIAN.divide(SECOND))
        .shownIn("r/min", "r/min");

    private MechanicsUnits() {
    }
}
