// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Optional;

/**
 * What a person gave: the number as typed, what it is worth in that unit, the unit as typed, and the accuracy if any.
 */
record Given(String number, double value, String unit, Optional<Accuracy> accuracy) {

    /** Stands in a quantity that was computed: its text is made from the SI number when somebody asks. */
    static final Given COMPUTED = new Given("", 0, "", Optional.empty());

    /** Symbol of a pure number. */
    static final String PURE = "1";

    static Given of(double number, String unit) {
        return new Given(DecimalText.of(number), number, unit, Optional.empty());
    }

    Given with(Accuracy halfWidth) {
        return new Given(number, value, unit, Optional.of(halfWidth));
    }

    /** {@return the text that reads back as this} */
    String text(boolean unitMayBeLeftOut) {
        boolean pure = unit.equals(PURE);
        String reading = pure && unitMayBeLeftOut ? number : number + " " + unit;
        return accuracy.map(off -> reading + " " + (pure && off.unit().equals(PURE) ? "±" + off.number() : off.toString()))
            .orElse(reading);
    }
}
