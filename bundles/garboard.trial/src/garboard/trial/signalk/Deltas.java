// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

import garboard.trial.log.Channel;
import garboard.trial.log.Decimal;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.log.TextCursor;

/**
 * Takes the deltas of one log.
 *
 * <p>A converter that is in use gives all lines of an AC source one name, so that a name that comes twice in one update says nothing; and
 * writes coolant and fuel pressure 1000 times too high. The first gives itself away by the highest pressure that a cooling system can
 * have; from then on no fuel pressure of that source is believed either.
 */
final class Deltas {

    private static final String OWN = "vessels.self";
    private static final String OWN_BY_NUMBER = "vessels.urn:mrn:signalk:uuid:";
    /** What others than the own vessel send with their radio; it would bring a channel for each ship in sight. */
    private static final String OF_EVERY_SHIP = "navigation.";
    private static final int MOST_NAMES = 4 * LogIntake.MOST_CHANNELS;
    private static final int LONGEST_NAME = 400;

    private final LogIntake intake;
    private final LogTally tally;
    private final LogStamps stamps;
    private final TextCursor cursor = new TextCursor();
    private final Map<String, Optional<Known>> known = new HashMap<>();
    private final Set<String> thousandfold = new HashSet<>();
    private String self = OWN;

    Deltas(LogIntake intake, LogOptions options) {
        this.intake = intake;
        tally = intake.tally();
        stamps = new LogStamps(options, tally);
    }

    /** A path of one source with its channel. */
    private record Known(Paths.Meaning meaning, int channel) {
    }

    /** Takes one line; the logger's time is for updates that have none of their own. */
    void take(String line, OptionalLong loggerNs) {
        Optional<Delta> read = Delta.read(new StringReader(line));
        if (read.isEmpty()) {
            tally.count(Mishap.UNREADABLE_LINE);
            return;
        }
        Delta delta = read.get();
        if (!delta.self().isEmpty()) {
            self = delta.self().startsWith("vessels.") ? delta.self() : "vessels." + delta.self();
        }
        for (Delta.Update update : delta.updates()) {
            take(isOwn(delta.context()) ? "" : delta.context(), update, loggerNs);
        }
        if (!delta.updates().isEmpty()) {
            tally.messages("delta", 1);
        }
    }

    private boolean isOwn(String context) {
        return context.isEmpty() || context.equals(OWN) || context.equals(self) || context.startsWith(OWN_BY_NUMBER);
    }

    private void take(String context, Delta.Update update, OptionalLong loggerNs) {
        OptionalLong time = time(update.timestamp(), loggerNs);
        if (time.isEmpty()) {
            return;
        }
        tally.time(time.getAsLong());
        Map<String, Long> times = update.values().stream().collect(Collectors.groupingBy(Delta.Value::path, Collectors.counting()));
        for (Delta.Value value : update.values()) {
            Optional<Known> target = find(context, update.source(), value.path());
            if (target.isEmpty()) {
                tally.foreign(value.path());
            } else if (times.get(value.path()) > 1) {
                intake.missing(target.get().channel(), Mishap.AMBIGUOUS_VALUE);
            } else {
                value(time.getAsLong(), context + "|" + update.source(), target.get(), value);
            }
        }
    }

    private OptionalLong time(String timestamp, OptionalLong loggerNs) {
        if (timestamp.isEmpty()) {
            if (loggerNs.isEmpty()) {
                tally.count(Mishap.NO_TIME);
            }
            return loggerNs;
        }
        byte[] bytes = timestamp.getBytes(StandardCharsets.UTF_8);
        cursor.set(bytes, 0, bytes.length);
        LogStamps.Result result = stamps.dateAndTime(cursor);
        if (result == LogStamps.Result.OK && cursor.isAtEnd()) {
            return OptionalLong.of(stamps.ns());
        }
        tally.count(result == LogStamps.Result.AMBIGUOUS ? Mishap.AMBIGUOUS_TIME : Mishap.UNREADABLE_TIME);
        return OptionalLong.empty();
    }

    private Optional<Known> find(String context, String source, String path) {
        String name = context + "|" + source + "|" + path;
        Optional<Known> found = known.get(name);
        if (found == null) {
            boolean ours = context.isEmpty() || !path.startsWith(OF_EVERY_SHIP);
            found = ours ? Paths.shared().meaning(path).map(meaning -> known(meaning, new Channel.Origin(context, source, path))) : Optional.empty();
            if (known.size() < MOST_NAMES && name.length() < LONGEST_NAME) {
                known.put(name, found);
            }
        }
        return found;
    }

    private Known known(Paths.Meaning meaning, Channel.Origin origin) {
        return new Known(meaning,
            intake.channel(new Channel(meaning.measurand(), meaning.line(), meaning.instance(), meaning.detail(), origin)));
    }

    private void value(long timeNs, String source, Known target, Delta.Value value) {
        switch (value.type()) {
            case NULL -> intake.missing(target.channel(), Mishap.NOT_AVAILABLE);
            case NUMBER -> number(timeNs, source, target, value.text());
            case STRING -> word(timeNs, target, value.text());
            case OTHER -> intake.missing(target.channel(), Mishap.UNREADABLE_VALUE);
        }
    }

    private void number(long timeNs, String source, Known target, String text) {
        OptionalDouble number = Decimal.parse(text);
        Paths.Meaning meaning = target.meaning();
        if (number.isEmpty() || meaning.unit().isEmpty()) {
            intake.missing(target.channel(), Mishap.UNREADABLE_VALUE);
            return;
        }
        double si;
        try {
            si = meaning.si(number.getAsDouble());
        } catch (IllegalArgumentException cannotBe) { // such as a temperature below absolute zero
            intake.missing(target.channel(), Mishap.IMPOSSIBLE);
            return;
        }
        if (meaning.measurand() == Measurand.COOLANT_PRESSURE && si > 0 && !meaning.measurand().isPossible(si) && thousandfold.size() < MOST_NAMES) {
            thousandfold.add(source);
        }
        if (meaning.measurand() == Measurand.FUEL_PRESSURE && thousandfold.contains(source)) {
            intake.missing(target.channel(), Mishap.IMPOSSIBLE);
        } else {
            intake.value(timeNs, target.channel(), si);
        }
    }

    private void word(long timeNs, Known target, String text) {
        if (target.meaning().measurand() == Measurand.CLOCK) {
            clock(timeNs, target, text);
            return;
        }
        Optional<Double> code = target.meaning().isState() ? Paths.state(text) : Optional.empty();
        if (code.isPresent()) {
            intake.value(timeNs, target.channel(), code.get());
        } else {
            intake.missing(target.channel(), Mishap.UNREADABLE_VALUE);
        }
    }

    private void clock(long timeNs, Known target, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        cursor.set(bytes, 0, bytes.length);
        if (stamps.dateAndTime(cursor) == LogStamps.Result.OK) {
            intake.clock(timeNs, stamps.ns());
            intake.value(timeNs, target.channel(), LogStamps.seconds(stamps.ns()));
        } else {
            intake.missing(target.channel(), Mishap.UNREADABLE_VALUE);
        }
    }
}
