// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.lang.reflect.InvocationTargetException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.quantity.Quantity;
import garboard.quantity.QuantityFormatException;

/**
 * The text form of the values that a field of a record can hold: what a record file says in an attribute, what a person types.
 * Quantities with their unit, choices by their literal ({@code sailing-monohull}), dates as {@code 2026-05-31}, moments with their
 * offset, pictures in hexadecimal digits. With labels choices go by their name in that language, and refusals are worded in it;
 * everything else is the same in all languages, a number may have a decimal point or a decimal comma in each.
 */
public final class FieldText {

    /** No quantity is longer; a text that is would only swell the message. */
    private static final int LONGEST_QUANTITY = 200;

    private FieldText() {
    }

    /**
     * {@return the value that a text of a record file stands for, empty for a date or moment that is left blank}
     *
     * @throws FieldTextException when the text is no value of the type; the message tells in English what was found and what would
     *                            be right
     */
    public static Optional<Object> value(EDataType type, String text) {
        return type instanceof EEnum choices ? Optional.of(choice(choices, text)) : value(type, text, Refusals::english);
    }

    /**
     * {@return the value that a person means by a text, empty for a date or moment that is left blank} A choice may be given by its
     * name in the language of the labels, by its English name or by its literal.
     *
     * @throws FieldTextException when the text is no value of the type; the message tells in the language of the labels what was found
     *                            and what would be right, but what is wrong with a quantity it tells in English
     */
    public static Optional<Object> value(EDataType type, String text, Labels labels) {
        return type instanceof EEnum choices ? Optional.of(choice(choices, text, labels)) : value(type, text, labels::refusals);
    }

    private static Optional<Object> value(EDataType type, String text, Supplier<Refusals> refusals) {
        Class<?> wanted = type.getInstanceClass();
        if (Quantity.class.isAssignableFrom(wanted)) {
            return Optional.of(quantity(wanted, text, refusals));
        }
        if (wanted == String.class) {
            return Optional.of(text);
        }
        if (wanted == Integer.class) {
            return Optional.of(whole(text, refusals));
        }
        if (wanted == LocalDate.class) {
            return text.isBlank() ? Optional.empty() : Optional.of(date(text, refusals));
        }
        if (wanted == OffsetDateTime.class) {
            return text.isBlank() ? Optional.empty() : Optional.of(moment(text, refusals));
        }
        if (wanted == byte[].class) {
            return Optional.of(bytes(text, refusals));
        }
        return Optional.ofNullable(EcoreUtil.createFromString(type, text));
    }

    /** {@return the text of a value, which {@link #value(EDataType, String)} reads back as an equal value} */
    public static String text(EDataType type, Object value) {
        return value instanceof byte[] bytes ? HexFormat.of().formatHex(bytes) : EcoreUtil.convertToString(type, value);
    }

    /** {@return the text of a value for a person, which {@link #value(EDataType, String, Labels)} reads back as an equal value} */
    public static String text(EDataType type, Object value, Labels labels) {
        return type instanceof EEnum && value instanceof Enumerator choice ? labels.label(choice) : text(type, value);
    }

    /** Calls the class itself and not the register of kinds, which sets up the units of all of them: that is most of a cold start. */
    private static Object quantity(Class<?> type, String text, Supplier<Refusals> refusals) {
        if (text.length() > LONGEST_QUANTITY) {
            throw refusals.get().refuse("long", text);
        }
        try {
            return type.getMethod("valueOf", String.class).invoke(null, text);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof QuantityFormatException format) {
                throw new FieldTextException(format.getMessage(), format);
            }
            throw new IllegalStateException(type.getName() + ".valueOf broke on \"" + Refusals.shortened(text) + "\"", refused.getCause());
        } catch (ReflectiveOperationException missing) {
            throw new IllegalStateException(type.getName() + " has no public static valueOf(String)", missing);
        }
    }

    private static Object choice(EEnum choices, String text) {
        EEnumLiteral literal = choices.getEEnumLiteralByLiteral(text);
        if (literal == null) {
            String right = choices.getELiterals().stream().map(EEnumLiteral::getLiteral).collect(Collectors.joining(", "));
            throw Refusals.english().refuse("choice", text, right);
        }
        return literal.getInstance();
    }

    private static Object choice(EEnum choices, String text, Labels labels) {
        return labels.choice(choices, text).orElseThrow(() -> labels.refusals().refuse("choice", text,
            choices.getELiterals().stream().map(labels::label).collect(Collectors.joining(", ")))).getInstance();
    }

    private static Integer whole(String text, Supplier<Refusals> refusals) {
        try {
            return Integer.valueOf(text.strip());
        } catch (NumberFormatException refused) {
            throw refusals.get().refuse("whole", text, refused);
        }
    }

    private static LocalDate date(String text, Supplier<Refusals> refusals) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException refused) {
            throw refusals.get().refuse("date", text, refused);
        }
    }

    private static OffsetDateTime moment(String text, Supplier<Refusals> refusals) {
        try {
            return OffsetDateTime.parse(text.strip());
        } catch (DateTimeParseException refused) {
            throw refusals.get().refuse("moment", text, refused);
        }
    }

    private static byte[] bytes(String text, Supplier<Refusals> refusals) {
        try {
            return HexFormat.of().parseHex(text);
        } catch (IllegalArgumentException refused) {
            throw refusals.get().refuse("picture", text, refused);
        }
    }
}
