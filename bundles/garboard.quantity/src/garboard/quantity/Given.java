// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Objects;
import java.util.Optional;

/**
 * What a person gave: the number as typed, what it is worth in that unit, the unit as typed, and the accuracy if any. Where the
 * number came as a double, its text is made when somebody asks.
 */
final class Given {

    /** Stands in a quantity that was computed: number and unit are those of the SI unit. */
    static final Given COMPUTED = new Given("", 0, "", Optional.empty());

    /** Symbol of the unit of pure numbers. */
    static final String PURE = "1";

    private final String typed;
    private final double value;
    private final String unit;
    private final Optional<Accuracy> accuracy;

    private Given(String typed, double value, String unit, Optional<Accuracy> accuracy) {
        this.typed = typed;
        this.value = value + 0.0; // "-0" is worth 0
        this.unit = unit;
        this.accuracy = accuracy;
    }

    static Given typed(String number, double value, String unit) {
        return new Given(number, value, unit, Optional.empty());
    }

    static Given of(double number, String unit) {
        return new Given("", number, unit, Optional.empty());
    }

    Given with(Accuracy halfWidth) {
        return new Given(typed, value, unit, Optional.of(halfWidth));
    }

    String number() {
        return typed.isEmpty() ? DecimalText.of(value) : typed;
    }

    double value() {
        return value;
    }

    String unit() {
        return unit;
    }

    Optional<Accuracy> accuracy() {
        return accuracy;
    }

    /** {@return the text that reads back as this} */
    String text(boolean unitMayBeLeftOut) {
        boolean pure = unit.equals(PURE);
        String reading = pure && unitMayBeLeftOut ? number() : number() + " " + unit;
        return accuracy.map(off -> reading + " " + (pure && off.unit().equals(PURE) ? "±" + off.number() : off.toString()))
            .orElse(reading);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Given that && unit.equals(that.unit) && accuracy.equals(that.accuracy)
            && number().equals(that.number());
    }

    @Override
    public int hashCode() {
        return Objects.hash(number(), unit, accuracy);
    }
}
