// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.lang.reflect.InvocationTargetException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.quantity.Quantity;
import garboard.quantity.QuantityFormatException;

/**
 * The text form of the values that a field of a record can hold: what a record file says in an attribute, what a person types.
 * Quantities with their unit, choices by their literal ({@code sailing-monohull}), dates as {@code 2026-05-31}, moments with their
 * offset, pictures in hexadecimal digits.
 */
public final class FieldText {

    /** Longest piece of a wrong text that a message repeats. */
    private static final int REPEATED = 60;
    /** No quantity is longer; a text that is would only swell the message. */
    private static final int LONGEST_QUANTITY = 200;

    private FieldText() {
    }

    /**
     * {@return the value that a text stands for, empty for a date or moment that is left blank}
     *
     * @throws FieldTextException when the text is no value of the type; the message tells what was found and what would be right
     */
    public static Optional<Object> value(EDataType type, String text) {
        Class<?> wanted = type.getInstanceClass();
        if (Quantity.class.isAssignableFrom(wanted)) {
            return Optional.of(quantity(wanted, text));
        }
        if (type instanceof EEnum choices) {
            return Optional.of(choice(choices, text));
        }
        if (wanted == String.class) {
            return Optional.of(text);
        }
        if (wanted == Integer.class) {
            return Optional.of(whole(text));
        }
        if (wanted == LocalDate.class) {
            return text.isBlank() ? Optional.empty() : Optional.of(date(text));
        }
        if (wanted == OffsetDateTime.class) {
            return text.isBlank() ? Optional.empty() : Optional.of(moment(text));
        }
        if (wanted == byte[].class) {
            return Optional.of(bytes(text));
        }
        return Optional.ofNullable(EcoreUtil.createFromString(type, text));
    }

    /** {@return the text of a value, which {@link #value} reads back as an equal value} */
    public static String text(EDataType type, Object value) {
        return value instanceof byte[] bytes ? HexFormat.of().formatHex(bytes) : EcoreUtil.convertToString(type, value);
    }

    /** Calls the class itself and not the register of kinds, which sets up the units of all of them: that is most of a cold start. */
    private static Object quantity(Class<?> type, String text) {
        if (text.length() > LONGEST_QUANTITY) {
            throw new FieldTextException(quoted(text) + " is too long; right would be a number and a unit");
        }
        try {
            return type.getMethod("valueOf", String.class).invoke(null, text);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof QuantityFormatException format) {
                throw new FieldTextException(format.getMessage(), format);
            }
            throw new IllegalStateException(type.getName() + ".valueOf broke on " + quoted(text), refused.getCause());
        } catch (ReflectiveOperationException missing) {
            throw new IllegalStateException(type.getName() + " has no public static valueOf(String)", missing);
        }
    }

    private static Object choice(EEnum choices, String text) {
        EEnumLiteral literal = choices.getEEnumLiteralByLiteral(text);
        if (literal == null) {
            String right = choices.getELiterals().stream().map(EEnumLiteral::getLiteral).collect(Collectors.joining(", "));
            throw new FieldTextException(quoted(text) + " is none of the choices; right would be one of " + right);
        }
        return literal.getInstance();
    }

    private static Integer whole(String text) {
        try {
            return Integer.valueOf(text.strip());
        } catch (NumberFormatException refused) {
            throw new FieldTextException(quoted(text) + " is no whole number; right would be, for example, 4", refused);
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException refused) {
            throw new FieldTextException(quoted(text) + " is no date; right would be year-month-day, for example 2026-05-31", refused);
        }
    }

    private static OffsetDateTime moment(String text) {
        try {
            return OffsetDateTime.parse(text.strip());
        } catch (DateTimeParseException refused) {
            throw new FieldTextException(quoted(text) + " is no date with time and offset; right would be, for example, "
                + "2026-05-31T14:05:00+02:00", refused);
        }
    }

    private static byte[] bytes(String text) {
        try {
            return HexFormat.of().parseHex(text);
        } catch (IllegalArgumentException refused) {
            throw new FieldTextException(quoted(text) + " is no picture; right would be pairs of hexadecimal digits", refused);
        }
    }

    static String quoted(String text) {
        return "\"" + (text.length() > REPEATED ? text.substring(0, REPEATED) + "..." : text) + "\"";
    }
}
