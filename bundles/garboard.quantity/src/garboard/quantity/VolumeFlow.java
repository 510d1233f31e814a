// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A volume flow.
 *
 * <p>SI unit: cubic metre per second. Gallons are those of the United States.
 */
public final class VolumeFlow extends Quantity<VolumeFlow> {

    static final Kind<VolumeFlow> KIND = new Kind<>(VolumeFlow.class, VolumeFlow::new, FlowUnits.VOLUME_FLOW);

    private VolumeFlow(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the volume flow of so many SI units (cubic metre per second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static VolumeFlow of(double si) {
        return new VolumeFlow(si, Given.COMPUTED);
    }

    /**
     * {@return the volume flow of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of volume flow
     * @throws IllegalArgumentException when the number is not finite
     */
    public static VolumeFlow of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the volume flow a text tells}
     *
     * @throws QuantityFormatException when the text is no volume flow; the message says why and what would be right
     */
    public static VolumeFlow valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<VolumeFlow> kind() {
        return KIND;
    }
}
