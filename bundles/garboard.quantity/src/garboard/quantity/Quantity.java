// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A measured, entered or computed quantity: an SI double for calculations, and beside it the number, unit and accuracy exactly as
 * they were given, for paper. Immutable.
 *
 * <p>Equality is about what was given: {@code 1 in} does not equal {@code 25.4 mm}, and {@code 38 psi} does not equal
 * {@code 38.0 psi}. The order is about size: {@link #compareTo} and its friends look at the SI number alone, so the order is not
 * consistent with equals.
 *
 * @param <Q> the kind of quantity itself
 */
public abstract class Quantity<Q extends Quantity<Q>> implements Comparable<Q> {

    private final double si;
    private final Given given;

    /**
     * @throws IllegalArgumentException when the number is not finite: no quantity of ours is, so a calculation went wrong
     */
    Quantity(double si, Given given) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(getClass().getSimpleName() + ": " + si + " is not a value a quantity can have");
        }
        this.si = si + 0.0; // -0.0 becomes 0.0: the two would print alike and compare unlike
        this.given = given;
    }

    /** {@return the kind of this quantity} */
    public abstract Kind<Q> kind();

    /** {@return the number in the SI unit of the kind} */
    public final double si() {
        return si;
    }

    /**
     * {@return the number in a unit} In the unit it was given in, this is the very number that was given.
     *
     * @throws QuantityFormatException when the text is no unit of this kind
     */
    public final double in(String unit) {
        AcceptedUnit wanted = kind().unit(unit);
        if (given != Given.COMPUTED && kind().unit(given.unit()) == wanted) {
            return given.value();
        }
        return wanted.conversion().fromSi(si);
    }

    /** {@return the number as given, for example {@code 38}, {@code 1 1/2} or, in {@code 5 ft 3 in}, {@code 5 ft 3}} */
    public final String givenNumber() {
        return given().number();
    }

    /** {@return the unit as given, {@code 1} for a pure number} */
    public final String givenUnit() {
        return given().unit();
    }

    /** {@return the accuracy, where it is known} */
    public final Optional<Accuracy> accuracy() {
        return given.accuracy();
    }

    /** {@return the half width of the accuracy in the SI unit, where it is known} */
    public final OptionalDouble accuracySi() {
        if (given.accuracy().isEmpty()) {
            return OptionalDouble.empty();
        }
        Accuracy off = given.accuracy().get();
        Given reading = given();
        double halfWidth = off.isOfReading() ? Math.abs(reading.value()) * off.halfWidth() / 100 : off.halfWidth();
        String unit = off.isOfReading() ? reading.unit() : off.unit();
        return OptionalDouble.of(kind().unit(unit).conversion().halfWidthToSi(in(unit), halfWidth));
    }

    /**
     * {@return the same quantity with an accuracy to both sides, in place of an earlier one} The half width is taken as a
     * difference: {@code 0.5 degC} stands for half a kelvin.
     *
     * @throws QuantityFormatException when the half width is negative
     */
    public final Q withAccuracy(Q halfWidth) {
        return withHalfWidth(halfWidth);
    }

    /**
     * {@return the same quantity with an accuracy, in place of an earlier one}
     *
     * @throws QuantityFormatException when its unit is neither per cent nor a unit of this kind
     */
    public final Q withAccuracy(Accuracy accuracy) {
        if (!accuracy.isOfReading()) {
            kind().unit(accuracy.unit());
        }
        return kind().make(si, given().with(accuracy));
    }

    /** Takes the half width from a quantity of this kind or of the kind of its differences. */
    final Q withHalfWidth(Quantity<?> halfWidth) {
        if (halfWidth.givenUnit().equals(Accuracy.PER_CENT)) {
            // as an accuracy, % would be read as per cent of the reading; here it is the unit of the half width itself
            return withAccuracy(new Accuracy(DecimalText.of(halfWidth.si()), Given.PURE));
        }
        Given width = halfWidth.given();
        boolean oneNumber = NumberText.whole(width.number()).isPresent(); // not so in 5 ft 3 in
        String unit = kind().accepts(width.unit()) ? width.unit() : halfWidth.kind().unit(width.unit()).symbol();
        return withAccuracy(new Accuracy(oneNumber ? width.number() : DecimalText.of(width.value()), unit));
    }

    /**
     * {@return this less the other} Of two temperatures a temperature difference, of two gauge or two absolute pressures a
     * pressure difference, of all else the same kind.
     */
    public Quantity<?> differenceFrom(Q other) {
        return kind().of(si - other.si());
    }

    /** {@return whether this is the smaller, by SI number} */
    public final boolean isLessThan(Q other) {
        return si < other.si();
    }

    /** {@return whether this is the larger, by SI number} */
    public final boolean isMoreThan(Q other) {
        return si > other.si();
    }

    @Override
    public final int compareTo(Q other) {
        return Double.compare(si, other.si());
    }

    @Override
    public final boolean equals(Object other) {
        if (this == other) {
            return true;
        }
        return other != null && other.getClass() == getClass() && givenAlike((Quantity<?>) other);
    }

    @Override
    public final int hashCode() {
        return given().hashCode();
    }

    /** {@return the text as given, which {@code valueOf} reads back as an equal quantity with the same SI number} */
    @Override
    public final String toString() {
        return given().text(kind().unitMayBeLeftOut());
    }

    private boolean givenAlike(Quantity<?> other) {
        boolean bothComputed = given == Given.COMPUTED && other.given == Given.COMPUTED;
        return bothComputed ? si == other.si : given().equals(other.given());
    }

    private Given given() {
        return given == Given.COMPUTED ? Given.of(si, kind().siUnit()) : given;
    }
}
