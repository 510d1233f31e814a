// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A slope told as an angle: the SI number is rise over run, that is the tangent of the degrees. JSR 385 converters of units
 * know no such relation, so it stands here by itself.
 */
record TangentConversion() implements Conversion {

    /** Steepest slope that may be told in degrees. At 90 deg the run is nothing and rise over run has no value. */
    static final double STEEPEST_DEGREES = 89.9;

    @Override
    public double toSi(double degrees) {
        if (!(Math.abs(degrees) <= STEEPEST_DEGREES)) {
            throw new QuantityFormatException("slope: " + degrees + " deg - a slope in degrees lies between -"
                + STEEPEST_DEGREES + " and " + STEEPEST_DEGREES);
        }
        return Math.tan(Math.toRadians(degrees));
    }

    @Override
    public double fromSi(double si) {
        return Math.toDegrees(Math.atan(si));
    }

    @Override
    public double halfWidthToSi(double number, double halfWidth) {
        double steeper = Math.tan(Math.toRadians(Math.min(STEEPEST_DEGREES, number + halfWidth)));
        double flatter = Math.tan(Math.toRadians(Math.max(-STEEPEST_DEGREES, number - halfWidth)));
        return (steeper - flatter) / 2;
    }
}
