// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One stream of readings in a log: what is measured, on which line, of which of several engines, batteries or tanks, and where it came
 * from. A generator set may call itself engine 0, 2, 11 or anything else, so a person says which channel is which (see
 * {@code garboard.trial.steps.Assignment}); nothing is guessed from the instance.
 *
 * @param measurand what is measured
 * @param line      which conductors, {@link AcLine#NONE} where that is no question
 * @param instance  what the sender calls the engine, battery, tank ..., as it says it ({@code 0}, {@code Engine#0}); empty where it does not
 * @param detail    what the sender says beyond that, such as the liquid in a tank; may be empty
 * @param origin    who sent it, in what
 */
public record Channel(Measurand measurand, AcLine line, String instance, String detail, Origin origin) {

    /** Longer than any real name; what is longer is cut, so that a garbled log cannot fill the memory with names. */
    static final int LONGEST_NAME = 200;

    public Channel {
        Objects.requireNonNull(measurand, "measurand");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(origin, "origin");
        instance = cut(instance);
        detail = cut(detail);
    }

    static String cut(String name) {
        return name.substring(0, Math.min(LONGEST_NAME, name.length()));
    }

    /**
     * Where a reading came from.
     *
     * @param bus     the interface of the logger, such as {@code can0}; may be empty
     * @param sender  the address, talker or source; may be empty
     * @param message the message: {@code 127489}, {@code XDR}, a path, the heading of a column
     */
    public record Origin(String bus, String sender, String message) {

        public Origin {
            bus = cut(bus);
            sender = cut(sender);
            message = cut(message);
        }

        @Override
        public String toString() {
            return Stream.of(bus, sender.isEmpty() ? "" : "source " + sender, message).filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
        }
    }

    /**
     * {@return a key that is the same each time this channel turns up in a log of the same format on the same boat} It holds no line
     * breaks; parts are parted by {@code |}, which within a part is written {@code /}.
     */
    public String key() {
        return Stream.of(origin.bus(), origin.sender(), origin.message(), measurand.name(), line.name(), instance, detail)
            .map(part -> part.replace('|', '/').replaceAll("\\p{Cntrl}", " ")).collect(Collectors.joining("|"));
    }

    /** {@return what to show a person, such as {@code AC voltage, line 1, 0 (can0, source 41, 127504)}} */
    @Override
    public String toString() {
        String what = Stream.of(measurand.label(), line.label(), detail, instance).filter(part -> !part.isEmpty())
            .collect(Collectors.joining(", "));
        return what + " (" + origin + ")";
    }
}
