// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A kind of quantity: its name, its SI unit, the units it accepts, and how to make one. There is one instance for each class of
 * quantity.
 *
 * @param <Q> the class of the quantities
 */
public final class Kind<Q extends Quantity<Q>> {

    private final Class<Q> type;
    private final Maker<Q> maker;
    private final UnitTable table;

    Kind(Class<Q> type, Maker<Q> maker, UnitTable table) {
        this.type = type;
        this.maker = maker;
        this.table = table;
    }

    /** Calls the constructor of a quantity. */
    @FunctionalInterface
    interface Maker<Q> {
        Q make(double si, Given given);
    }

    /**
     * {@return the kind of a class of quantities}
     *
     * @throws IllegalArgumentException when the class is none of ours
     */
    public static <Q extends Quantity<Q>> Kind<Q> of(Class<Q> type) {
        @SuppressWarnings("unchecked") // the registry holds each kind under its own class
        Kind<Q> kind = (Kind<Q>) ofType(type).orElseThrow(
            () -> new IllegalArgumentException(type.getName() + " is not a class of quantities"));
        return kind;
    }

    /** {@return the kind of a class that may be a class of quantities} For callers that know it only at run time. */
    public static Optional<Kind<?>> ofType(Class<?> type) {
        return Optional.ofNullable(Registry.BY_TYPE.get(type));
    }

    /** {@return the kind of this name, for example {@code gauge pressure}} */
    public static Optional<Kind<?>> named(String name) {
        return Registry.ALL.stream().filter(kind -> kind.name().equals(name)).findFirst();
    }

    /** {@return every kind, in the order geometry, mechanics, time, pressure, flow, heat, electricity, ratio} */
    public static List<Kind<?>> all() {
        return Registry.ALL;
    }

    /** {@return the name in small letters, for example {@code gauge pressure}} */
    public String name() {
        return table.kindName();
    }

    /** {@return the class of the quantities} */
    public Class<Q> type() {
        return type;
    }

    /** {@return the symbol of the SI unit, {@code 1} for a pure number} */
    public String siUnit() {
        return table.si().symbol();
    }

    /** {@return the symbols of the accepted units as we write them, the usual ones first} */
    public List<String> units() {
        return table.units().stream().map(AcceptedUnit::symbol).toList();
    }

    /** {@return whether the text is, in any accepted spelling, a unit of this kind} */
    public boolean accepts(String unit) {
        return table.find(unit).isPresent();
    }

    /** {@return the symbol of the customary unit in a system} */
    public String displayUnit(UnitSystem system) {
        return table.shownIn(system).symbol();
    }

    /** {@return whether a number without a unit is understood, as a pure number} */
    public boolean unitMayBeLeftOut() {
        return table.unitMayBeLeftOut();
    }

    /**
     * {@return the quantity of so many SI units}
     *
     * @throws IllegalArgumentException when the number is not finite or below what the kind can be
     */
    public Q of(double si) {
        return maker.make(si, Given.COMPUTED);
    }

    /**
     * {@return the quantity of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of this kind
     * @throws IllegalArgumentException when the number is not finite or below what the kind can be
     */
    public Q of(double number, String unit) {
        AcceptedUnit found = unit(unit);
        double si = found.conversion().toSi(number);
        return maker.make(si, Double.isFinite(number) ? Given.of(number, unit) : Given.COMPUTED);
    }

    /**
     * {@return the quantity a text tells} See the package description for what may be written.
     *
     * @throws QuantityFormatException when the text is no quantity of this kind; the message says why and what would be right
     */
    public Q parse(String text) {
        Given given = QuantityText.read(table, text);
        try {
            return make(unit(given.unit()).conversion().toSi(given.value()), given);
        } catch (QuantityFormatException refused) {
            throw refused;
        } catch (IllegalArgumentException refused) {
            throw new QuantityFormatException(name() + ": \"" + text + "\" - " + refused.getMessage());
        }
    }

    @Override
    public String toString() {
        return name();
    }

    Q make(double si, Given given) {
        return maker.make(si, given);
    }

    AcceptedUnit unit(String symbol) {
        return table.find(symbol).orElseThrow(() -> new QuantityFormatException(name() + ": " + table.refusal(symbol)));
    }

    /** Filled when first asked for, so that one quantity can be used without setting up all the others. */
    private static final class Registry {

        static final List<Kind<?>> ALL = List.of(
            Length.KIND, Area.KIND, Volume.KIND, Angle.KIND, Slope.KIND,
            Mass.KIND, Force.KIND, Density.KIND, KinematicViscosity.KIND, DynamicViscosity.KIND,
            TimeSpan.KIND, Speed.KIND, Frequency.KIND, RotationalSpeed.KIND,
            AbsolutePressure.KIND, GaugePressure.KIND, PressureDifference.KIND,
            VolumeFlow.KIND, MassFlow.KIND,
            Temperature.KIND, TemperatureDifference.KIND, Energy.KIND, Power.KIND,
            HeatingValue.KIND, SpecificHeat.KIND, SpecificConsumption.KIND,
            Voltage.KIND, Current.KIND, Resistance.KIND, ResistancePerLength.KIND, Charge.KIND,
            ApparentPower.KIND, ReactivePower.KIND, Ratio.KIND);

        static final Map<Class<?>, Kind<?>> BY_TYPE =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Kind::type, Function.identity()));
    }
}
