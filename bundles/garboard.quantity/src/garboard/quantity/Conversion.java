// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * How the number in one unit becomes the number in the SI unit of its kind and back. Made once per unit, immutable.
 */
sealed interface Conversion permits AffineConversion, TangentConversion {

    /** {@return the SI number for a number in this unit} */
    double toSi(double number);

    /** {@return the number in this unit for an SI number} */
    double fromSi(double si);

    /**
     * {@return the SI half width of a band around a number, both in this unit} An offset such as that of degC has no part in it.
     */
    double halfWidthToSi(double number, double halfWidth);
}
