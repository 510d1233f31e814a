// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogReader;
import garboard.trial.nmea0183.SentenceLogReader;
import garboard.trial.nmea2000.FrameLogReader;
import garboard.trial.nmea2000.MessageLogReader;
import garboard.trial.signalk.DeltaLogReader;

/** The formats of logs that are read, told apart by their lines. Endings of file names tell nothing. */
public enum LogFormat {
    CANDUMP("CAN frames (candump)", "\\s*(\\([\\d. :-]+\\)\\s+)?\\S+\\s+((RX|TX)\\s.*)?[0-9A-Fa-f]{3,8}(#.*|\\s+\\[\\d+\\].*)",
        FrameLogReader::candump),
    GATEWAY("CAN frames (gateway, raw)", "\\s*\\d\\d:\\d\\d:\\d\\d\\.\\d+\\s+[RT]\\s+[0-9A-Fa-f]{8}(\\s+[0-9A-Fa-f]{2})*\\s*",
        FrameLogReader::gateway),
    MESSAGES("NMEA 2000 messages", "\\d{4}-\\d\\d-\\d\\d[T -]\\d\\d:\\d\\d:\\d\\d[.\\d]*Z?,\\d+,\\d+,\\d+,\\d+,\\d+(,[0-9A-Fa-f]{2})*.*",
        MessageLogReader::new),
    SIGNAL_K("Signal K deltas", "\\s*\\{.*|\\d{9,};[^;]*;.*", DeltaLogReader::new),
    NMEA_0183("NMEA 0183 sentences", "([\\d:.TZ +-]+[ \\t,;]+)?(\\\\[^\\\\]*\\\\)?[$!][A-Z]{2}[A-Z0-9]*,.*", SentenceLogReader::new),
    /** What is none of the others, see {@code garboard.trial.csv}; without a reader of its own, as it wants a mapping. */
    CSV("table (CSV)", "(?!)", options -> {
        throw new IllegalStateException("a table is read by a mapping of its columns");
    });

    /** As many lines as are looked at. */
    static final int MOST_LINES = 200;
    /** So that a log that begins with a cut line or a remark is still known. */
    private static final double LEAST_SHARE = 0.5;
    /** As much of a line as tells its format; a pattern would take long over a line without end. */
    private static final int LOOKED_AT = 300;

    private final String label;
    private final Pattern line;
    private final Function<LogOptions, LogReader> reader;

    LogFormat(String label, String line, Function<LogOptions, LogReader> reader) {
        this.label = label;
        this.line = Pattern.compile(line);
        this.reader = reader;
    }

    /** {@return what to call it} */
    public String label() {
        return label;
    }

    /**
     * {@return a reader of this format}
     *
     * @throws IllegalStateException for {@link #CSV}
     */
    public LogReader reader(LogOptions options) {
        return reader.apply(options);
    }

    /** {@return the format that most of the first lines have; nothing when it is none, which may still be a table} */
    public static Optional<LogFormat> of(List<String> firstLines) {
        List<String> lines = firstLines.stream().filter(text -> !text.isBlank() && !text.startsWith("#")).limit(MOST_LINES)
            .map(text -> text.substring(0, Math.min(LOOKED_AT, text.length()))).toList();
        LogFormat best = CSV;
        long most = 0;
        for (LogFormat format : values()) {
            long fitting = lines.stream().filter(text -> format.line.matcher(text).matches()).count();
            if (fitting > most) {
                best = format;
                most = fitting;
            }
        }
        return most > 0 && most >= LEAST_SHARE * lines.size() ? Optional.of(best) : Optional.empty();
    }
}
