// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Objects;

/**
 * How far a reading may be off, either way, as given with it: {@code ±0.5 psi} (in a unit of the kind) or {@code ±2 %} (per
 * cent of the reading as given; at 80 degC, ±2 % is ±1.6 K).
 *
 * @param number the half width as typed, never negative
 * @param unit   the unit as typed; {@code %} always means per cent of the reading, even where the reading itself is in per cent
 */
public record Accuracy(String number, String unit) {

    /** The unit that means: per cent of the reading. */
    public static final String PER_CENT = "%";

    /**
     * @throws QuantityFormatException when the number is not one or is negative
     */
    public Accuracy {
        Objects.requireNonNull(unit, "unit");
        NumberText read = NumberText.whole(number).orElseThrow(
            () -> new QuantityFormatException("accuracy: \"" + number + "\" is not a number; write for example ±0.5 psi or ±2 %"));
        if (read.value() < 0) {
            throw new QuantityFormatException(
                "accuracy: \"" + number + "\" is negative; it is a half width and lies to both sides, write ±" + DecimalText.of(-read.value()));
        }
    }

    /** {@return an accuracy of so many per cent of the reading} */
    public static Accuracy ofReading(double perCent) {
        return new Accuracy(DecimalText.of(perCent), PER_CENT);
    }

    /** {@return whether this is per cent of the reading, not a width in the unit of the kind} */
    public boolean isOfReading() {
        return unit.equals(PER_CENT);
    }

    /** {@return the half width as a number in its unit} */
    public double halfWidth() {
        return NumberText.whole(number).orElseThrow().value();
    }

    /** {@return the accuracy as written after a reading, for example {@code ±0.5 psi}} */
    @Override
    public String toString() {
        return "±" + number + " " + unit;
    }
}
