// SPDX-License-Identifier: EPL-2.0
package garboard.model.testing;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;

import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.QuantityFormatException;

/** Random values for the datatypes of the model. */
public final class RandomValues {

    /** What XML, spreadsheets, properties files and terminals stumble over. All of it can stand in XML 1.0. */
    private static final List<String> PIECES = List.of("hose", "Raw water", " ", "  ", "\n", "\r\n", "\r", "\t", "<", ">", "&", "&amp;", "\"", "'",
        "<b>", "]]>", "<!--", "=SUM(A1:A3)", "=", "+1", "-2", "@x", "%", "#", "\\", "{0}", "$1", "é", "Größe", "漢字", "\u00a0", "\u2028", "\u0085",
        "\u202e", "😀", "\uFFFD", "12,5", "3/4", "yes", "null", ";", ",", "|", "ﬁ", "e\u0301");

    private final Random random;

    public RandomValues(Random random) {
        this.random = random;
    }

    /** {@return a value of a datatype of the model} */
    public Object value(EDataType type) {
        Class<?> wanted = type.getInstanceClass();
        if (Kind.ofType(wanted).isPresent()) {
            return quantity(Kind.ofType(wanted).get());
        }
        if (type instanceof EEnum choices) {
            return choices.getELiterals().get(random.nextInt(choices.getELiterals().size())).getInstance();
        }
        if (wanted == String.class) {
            return text();
        }
        if (wanted == Integer.class) {
            return random.nextInt(10) == 0 ? random.nextInt() : random.nextInt(100);
        }
        if (wanted == LocalDate.class) {
            return date();
        }
        if (wanted == OffsetDateTime.class) {
            return OffsetDateTime.of(date(), LocalTime.ofNanoOfDay(random.nextLong(LocalTime.MAX.toNanoOfDay())),
                ZoneOffset.ofTotalSeconds(60 * (random.nextInt(28 * 60) - 14 * 60)));
        }
        if (wanted == byte[].class) {
            byte[] bytes = new byte[random.nextInt(40)];
            random.nextBytes(bytes);
            return bytes;
        }
        throw new IllegalStateException("no random values are known for " + type.getName() + "; add them here");
    }

    /** {@return a text, sometimes empty} */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int pieces = random.nextInt(6); pieces > 0; pieces--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }

    /** {@return a quantity in one of the units its kind takes, with or without accuracy} */
    public Quantity<?> quantity(Kind<?> kind) {
        String unit = kind.units().get(random.nextInt(kind.units().size()));
        String text = number() + " " + unit + accuracy(kind);
        try {
            return kind.parse(text);
        } catch (QuantityFormatException outside) {
            // below what the kind can be, or a slope beyond the upright
            return kind.parse("12 " + unit);
        }
    }

    private String number() {
        String digits = String.valueOf(random.nextInt(1000));
        return (random.nextInt(8) == 0 ? "-" : "") + switch (random.nextInt(6)) {
            case 0 -> digits + "." + random.nextInt(1000);
            case 1 -> digits + ".0";
            case 2 -> String.format(Locale.ROOT, "%d/%d", 1 + random.nextInt(15), 16);
            case 3 -> random.nextInt(20) + " 3/8";
            case 4 -> digits + "e-3";
            default -> digits;
        };
    }

    private String accuracy(Kind<?> kind) {
        return switch (random.nextInt(4)) {
            case 0 -> " ±" + random.nextInt(5) + "." + random.nextInt(10) + " %";
            case 1 -> " ±0." + (1 + random.nextInt(9)) + " " + kind.units().get(random.nextInt(kind.units().size()));
            default -> "";
        };
    }

    private LocalDate date() {
        return random.nextInt(20) == 0 ? LocalDate.of(random.nextBoolean() ? 1 : 12_345, 2, 28)
            : LocalDate.of(1990, 1, 1).plusDays(random.nextInt(25_000));
    }
}
