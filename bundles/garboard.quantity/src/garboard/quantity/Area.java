// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An area: the cross-section of a cable or hose, a vent opening.
 *
 * <p>SI unit: square metre. AWG sizes are names of conductors, not units, and are not read here.
 */
public final class Area extends Quantity<Area> {

    static final Kind<Area> KIND = new Kind<>(Area.class, Area::new, GeometryUnits.AREA);

    private Area(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the area of so many SI units (square metre)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Area of(double si) {
        return new Area(si, Given.COMPUTED);
    }

    /**
     * {@return the area of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of area
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Area of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the area a text tells}
     *
     * @throws QuantityFormatException when the text is no area; the message says why and what would be right
     */
    public static Area valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Area> kind() {
        return KIND;
    }
}
