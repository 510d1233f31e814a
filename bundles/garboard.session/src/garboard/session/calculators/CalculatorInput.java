// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import garboard.physics.calculation.Parameter;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;

/** One input of a calculation: what it is called, what it takes, and what a text in it stands for. */
public final class CalculatorInput {

    private static final String WHOLE_NUMBER = "whole number";
    private static final String OR = " | ";

    private final Parameter<?> parameter;
    private final Optional<Kind<?>> kind;

    CalculatorInput(Parameter<?> parameter) {
        this.parameter = parameter;
        this.kind = Kind.named(parameter.accepts());
    }

    /** {@return the name by which the calculation knows it, as {@code sea-temperature}} */
    public String name() {
        return parameter.name();
    }

    /** {@return the name as words} */
    public String title() {
        String words = parameter.name().replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** {@return what it means, in English} */
    public String meaning() {
        return parameter.meaning();
    }

    /** {@return whether the calculation cannot do without} */
    public boolean required() {
        return !parameter.mayBeLeftOut();
    }

    /** {@return what is taken when it is left out; nothing where the calculation then does without} */
    public Optional<String> taken() {
        return parameter.defaultText();
    }

    /** {@return the kind of quantity, where it takes one} */
    public Optional<Kind<?>> kind() {
        return kind;
    }

    public boolean isCount() {
        return parameter.accepts().equals(WHOLE_NUMBER);
    }

    /** {@return the words to choose from; none where it takes a number} */
    public List<String> choices() {
        return kind.isPresent() || isCount() ? List.of() : Arrays.asList(parameter.accepts().split(Pattern.quote(OR)));
    }

    /** {@return the unit that a bare number is taken in: that of what is taken when it is left out, else the customary one} */
    public Optional<String> unit(UnitSystem system) {
        return kind.map(found -> taken().filter(text -> system == UnitSystem.SI).map(text -> found.parse(text).givenUnit())
            .orElseGet(() -> found.displayUnit(system))).filter(unit -> !unit.equals("1"));
    }

    /** {@return what a text stands for} */
    public Reading read(String text, EntryReader reader) {
        if (text.isBlank()) {
            return new Reading.Empty();
        }
        if (kind.isPresent()) {
            return reader.read(kind.get(), unit(reader.system()).orElse("1"), text);
        }
        return new Reading.Entered(text.strip(), Optional.empty());
    }

    /** {@return the text that the calculation is given for a text that was typed; nothing when it stands for nothing} */
    Optional<String> argument(String text, EntryReader reader) {
        return switch (read(text, reader)) {
            case Reading.Entered(Quantity<?> quantity, Optional<String> unit) -> Optional.of(quantity.toString());
            case Reading.Entered(Object value, Optional<String> unit) -> Optional.of(value.toString());
            default -> Optional.empty();
        };
    }
}
