// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A volume.
 *
 * <p>SI unit: cubic metre. Gallons, quarts, pints and fluid ounces are those of the United States.
 */
public final class Volume extends Quantity<Volume> {

    static final Kind<Volume> KIND = new Kind<>(Volume.class, Volume::new, GeometryUnits.VOLUME);

    private Volume(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the volume of so many SI units (cubic metre)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Volume of(double si) {
        return new Volume(si, Given.COMPUTED);
    }

    /**
     * {@return the volume of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of volume
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Volume of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the volume a text tells}
     *
     * @throws QuantityFormatException when the text is no volume; the message says why and what would be right
     */
    public static Volume valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Volume> kind() {
        return KIND;
    }
}
