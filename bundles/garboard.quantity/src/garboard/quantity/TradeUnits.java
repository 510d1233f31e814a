// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MILLI;

import java.math.BigDecimal;
import java.math.BigInteger;

import javax.measure.Unit;

import tech.units.indriya.function.Calculus;
import tech.units.indriya.function.DefaultNumberSystem;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * The units of the trade as JSR 385 units, each built from SI by its defined factor. "Exact" factors are so by definition: the
 * international yard and pound agreement of 1959, the US gallon of 231 cubic inches, standard gravity. All agree with NIST Special
 * Publication 811 (2008), appendix B.8, which is also where the conventional columns of mercury and water come from; the tests hold
 * them to the factors printed there.
 */
final class TradeUnits {

    static {
        // Indriya looks for its number system through the thread's context class loader, which in OSGi, or in a pool thread, may
        // not see it; setting it here first makes the class below load everywhere. It is the one that would have been found.
        Calculus.setCurrentNumberSystem(new DefaultNumberSystem());
    }

    static final Unit<?> METRE = Units.METRE;
    static final Unit<?> KILOGRAM = Units.KILOGRAM;
    static final Unit<?> SECOND = Units.SECOND;
    static final Unit<?> RADIAN = Units.RADIAN;
    static final Unit<?> ONE = Units.PERCENT.multiply(100);
    static final Unit<?> NEWTON = Units.NEWTON;
    static final Unit<?> PASCAL = Units.PASCAL;
    static final Unit<?> KELVIN = Units.KELVIN;
    static final Unit<?> JOULE = Units.JOULE;
    static final Unit<?> WATT = Units.WATT;
    static final Unit<?> VOLT = Units.VOLT;
    static final Unit<?> AMPERE = Units.AMPERE;
    static final Unit<?> OHM = Units.OHM;
    static final Unit<?> COULOMB = Units.COULOMB;
    static final Unit<?> HERTZ = Units.HERTZ;

    static final Unit<?> MILLIMETRE = MILLI(Units.METRE);
    static final Unit<?> CENTIMETRE = CENTI(Units.METRE);
    static final Unit<?> GRAM = Units.GRAM;
    static final Unit<?> SQUARE_METRE = METRE.pow(2);
    static final Unit<?> CUBIC_METRE = METRE.pow(3);
    static final Unit<?> LITRE = times(CUBIC_METRE, "0.001");
    static final Unit<?> MINUTE = times(SECOND, "60");
    static final Unit<?> HOUR = times(SECOND, "3600");
    static final Unit<?> DAY = times(HOUR, "24");
    static final Unit<?> KILOWATT_HOUR = KILO(Units.WATT).multiply(HOUR);

    /** Exact. */
    static final Unit<?> INCH = times(METRE, "0.0254");
    static final Unit<?> FOOT = times(INCH, "12");
    static final Unit<?> YARD = times(FOOT, "3");
    /** International nautical mile, exact. */
    static final Unit<?> NAUTICAL_MILE = times(METRE, "1852");
    static final Unit<?> STATUTE_MILE = times(FOOT, "5280");
    static final Unit<?> KNOT = NAUTICAL_MILE.divide(HOUR);
    /** Circular mil: the area of a round wire of 0.001 inch diameter, π/4 · (0.0000254 m)². */
    static final Unit<?> CIRCULAR_MIL = times(pi(INCH.pow(2)), "0.00000025");
    /** US gallon: 231 cubic inches, exact. */
    static final Unit<?> GALLON = times(INCH.pow(3), "231");
    static final Unit<?> QUART = GALLON.divide(4);
    static final Unit<?> PINT = GALLON.divide(8);
    static final Unit<?> FLUID_OUNCE = GALLON.divide(128);

    /** Avoirdupois pound, exact. */
    static final Unit<?> POUND = times(KILOGRAM, "0.45359237");
    static final Unit<?> OUNCE = POUND.divide(16);
    /** Standard acceleration of gravity, exact by convention. */
    static final Unit<?> STANDARD_GRAVITY = times(METRE.divide(SECOND.pow(2)), "9.80665");
    static final Unit<?> POUND_FORCE = POUND.multiply(STANDARD_GRAVITY);
    static final Unit<?> KILOGRAM_FORCE = KILOGRAM.multiply(STANDARD_GRAVITY);

    static final Unit<?> BAR = times(PASCAL, "100000");
    static final Unit<?> ATMOSPHERE = times(PASCAL, "101325");
    static final Unit<?> PSI = POUND_FORCE.divide(INCH.pow(2));
    /** Conventional millimetre of mercury: 13.5951 g/cm3 under standard gravity. */
    static final Unit<?> MM_OF_MERCURY = times(PASCAL, "133.322387415");
    /** Conventional inch of mercury, NIST SP 811: 3.386389 kPa; here 25.4 conventional millimetres, which rounds to it. */
    static final Unit<?> INCH_OF_MERCURY = times(MM_OF_MERCURY, "25.4");
    /** Conventional millimetre of water: 1 g/cm3 under standard gravity, 9.80665 Pa. */
    static final Unit<?> MM_OF_WATER = times(PASCAL, "9.80665");
    /** Conventional inch of water, NIST SP 811: 249.08891 Pa, that is 25.4 x 9.80665 Pa. */
    static final Unit<?> INCH_OF_WATER = times(MM_OF_WATER, "25.4");

    /** Difference of one degree Fahrenheit, 5/9 K. */
    static final Unit<?> FAHRENHEIT_DEGREE = times(KELVIN, "5").divide(9);
    static final Unit<?> CELSIUS = Units.CELSIUS;
    static final Unit<?> FAHRENHEIT = FAHRENHEIT_DEGREE.shift(exactly("459.67"));
    /** Mechanical horsepower: 550 ft·lbf/s, 745.699872 W. */
    static final Unit<?> HORSEPOWER = times(FOOT.multiply(POUND_FORCE).divide(SECOND), "550");
    /** Metric horsepower: 75 m·kgf/s, 735.49875 W. */
    static final Unit<?> METRIC_HORSEPOWER = times(METRE.multiply(KILOGRAM_FORCE).divide(SECOND), "75");
    /** International Table British thermal unit, 1055.05585262 J. */
    static final Unit<?> BTU = times(JOULE, "1055.05585262");

    static final Unit<?> DEGREE = pi(Units.RADIAN).divide(180);
    static final Unit<?> REVOLUTION = times(pi(Units.RADIAN), "2");

    private TradeUnits() {
    }

    /** {@return the unit times an exact decimal factor} */
    static Unit<?> times(Unit<?> unit, String factor) {
        return unit.multiply(exactly(factor));
    }

    private static Unit<?> pi(Unit<?> unit) {
        return unit.transform(MultiplyConverter.ofPiExponent(1));
    }

    private static RationalNumber exactly(String decimal) {
        BigDecimal number = new BigDecimal(decimal);
        return number.scale() <= 0 ? RationalNumber.of(number.toBigIntegerExact(), BigInteger.ONE)
            : RationalNumber.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }
}
