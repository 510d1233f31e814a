// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

import tech.units.indriya.function.RationalNumber;

/**
 * {@code si = (number * numerator + shift) / denominator}. Keeping the exact fraction instead of one rounded factor makes
 * 38 mm the double nearest to 0.038 and gives 12 for 12 degC read back from kelvin.
 */
record AffineConversion(double numerator, double denominator, double shift) implements Conversion {

    /** Whole numbers up to here are exact as a double. */
    private static final BigInteger EXACT = BigInteger.ONE.shiftLeft(53);

    /**
     * Asks JSR 385 for the converter and takes its exact coefficients.
     *
     * @throws IllegalArgumentException when the two units measure different things: a fault in the declaration
     */
    static AffineConversion between(Unit<?> unit, Unit<?> si) {
        UnitConverter converter;
        try {
            converter = unit.getConverterToAny(si);
        } catch (IncommensurableException wrongDeclaration) {
            throw new IllegalArgumentException(unit + " cannot be converted to " + si, wrongDeclaration);
        }
        RationalNumber offset = exactly(converter.convert((Number) 0));
        RationalNumber factor = exactly(converter.convert((Number) 1)).subtract(offset);
        BigInteger denominator = lowestCommonMultiple(factor.getDivisor(), offset.getDivisor());
        BigInteger numerator = factor.getDividend().multiply(denominator.divide(factor.getDivisor()));
        BigInteger shift = offset.getDividend().multiply(denominator.divide(offset.getDivisor()));
        if (numerator.compareTo(EXACT) > 0 || denominator.compareTo(EXACT) > 0) {
            return new AffineConversion(nearest(factor), 1, nearest(offset));
        }
        return new AffineConversion(numerator.doubleValue(), denominator.doubleValue(), shift.doubleValue());
    }

    @Override
    public double toSi(double number) {
        return (number * numerator + shift) / denominator;
    }

    @Override
    public double fromSi(double si) {
        return (si * denominator - shift) / numerator;
    }

    @Override
    public double halfWidthToSi(double number, double halfWidth) {
        return halfWidth * numerator / denominator;
    }

    private static RationalNumber exactly(Number number) {
        if (number instanceof RationalNumber rational) {
            return rational;
        }
        BigDecimal decimal = new BigDecimal(number.toString());
        return decimal.scale() <= 0
            ? RationalNumber.of(decimal.toBigIntegerExact(), BigInteger.ONE)
            : RationalNumber.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    private static double nearest(RationalNumber number) {
        return new BigDecimal(number.getDividend())
            .divide(new BigDecimal(number.getDivisor()), MathContext.DECIMAL128).doubleValue();
    }

    private static BigInteger lowestCommonMultiple(BigInteger a, BigInteger b) {
        return a.divide(a.gcd(b)).multiply(b);
    }
}
