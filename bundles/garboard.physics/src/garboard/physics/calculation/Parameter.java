// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import garboard.quantity.Kind;
import garboard.quantity.Quantity;

/**
 * One argument of a {@link Calculation}: how it is called, what it means, and how its text is read.
 *
 * @param <T> what the text becomes
 */
public final class Parameter<T> {

    private final String name;
    private final String meaning;
    private final String accepts;
    private final Function<String, T> reader;
    private final Optional<String> defaultText;
    private final Optional<T> absent;

    private Parameter(String name, String meaning, String accepts, Function<String, T> reader, Optional<String> defaultText, Optional<T> absent) {
        this.name = name;
        this.meaning = meaning;
        this.accepts = accepts;
        this.reader = reader;
        this.defaultText = defaultText;
        this.absent = absent;
    }

    /** A quantity, given as number and unit. */
    public static <Q extends Quantity<Q>> Parameter<Q> of(String name, Class<Q> type, String meaning) {
        Kind<Q> kind = Kind.of(type);
        return new Parameter<>(name, meaning, kind.name(), kind::parse, Optional.empty(), Optional.empty());
    }

    /** A whole number, such as a count of bends. */
    public static Parameter<Integer> wholeNumber(String name, String meaning) {
        return new Parameter<>(name, meaning, "whole number", text -> readWhole(text), Optional.empty(), Optional.empty());
    }

    /** One of the words of an enumeration, written in lower case with hyphens. */
    public static <E extends Enum<E>> Parameter<E> choice(String name, Class<E> type, String meaning) {
        String words = Arrays.stream(type.getEnumConstants()).map(Parameter::word).collect(Collectors.joining(" | "));
        return new Parameter<>(name, meaning, words, text -> readChoice(text, type, words), Optional.empty(), Optional.empty());
    }

    /** One of the words of a table, such as the sizes of a wire gauge. */
    public static Parameter<String> oneOf(String name, List<String> words, String meaning) {
        String accepted = String.join(" | ", words);
        return new Parameter<>(name, meaning, accepted, text -> readWord(text, words, accepted), Optional.empty(), Optional.empty());
    }

    /** The same argument, taken as this text where it is not given. */
    public Parameter<T> orElse(String text) {
        return new Parameter<>(name, meaning, accepts, reader, Optional.of(text), absent);
    }

    /** The same argument, which may be left out. */
    public Parameter<Optional<T>> optional() {
        return new Parameter<>(name, meaning, accepts, text -> Optional.of(reader.apply(text)), Optional.empty(), Optional.of(Optional.empty()));
    }

    public String name() {
        return name;
    }

    public String meaning() {
        return meaning;
    }

    /** Name of the kind of quantity, {@code whole number}, or the words to choose from. */
    public String accepts() {
        return accepts;
    }

    /** What is taken where the argument is not given; none for an argument that has to be given or may be absent. */
    public Optional<String> defaultText() {
        return defaultText;
    }

    /** Whether the calculation can do without. */
    public boolean mayBeLeftOut() {
        return absent.isPresent() || defaultText.isPresent();
    }

    T read(Optional<String> given) throws CalculationException {
        Optional<String> text = given.or(() -> defaultText);
        if (text.isEmpty()) {
            return absent.orElseThrow(() -> new CalculationException(name, name + " is missing: " + meaning + " (" + accepts + ")"));
        }
        try {
            return reader.apply(text.get());
        } catch (IllegalArgumentException unreadable) {
            throw new CalculationException(name, name + ": " + unreadable.getMessage(), unreadable);
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Integer readWhole(String text) {
        try {
            return Integer.valueOf(text.strip());
        } catch (NumberFormatException notWhole) {
            throw new IllegalArgumentException("\"" + text + "\" is not a whole number", notWhole);
        }
    }

    private static <E extends Enum<E>> E readChoice(String text, Class<E> type, String words) {
        String wanted = text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        return Arrays.stream(type.getEnumConstants()).filter(constant -> word(constant).equals(wanted)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + text + "\" is not one of " + words));
    }

    private static String readWord(String text, List<String> words, String accepted) {
        List<String> found = new ArrayList<>(words);
        found.removeIf(word -> !word.equalsIgnoreCase(text.strip()));
        if (found.isEmpty()) {
            throw new IllegalArgumentException("\"" + text + "\" is not one of " + accepted);
        }
        return found.get(0);
    }
}
