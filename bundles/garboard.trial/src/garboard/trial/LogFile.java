// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.trial.csv.CsvLogReader;
import garboard.trial.csv.CsvMapping;
import garboard.trial.csv.CsvMappings;
import garboard.trial.csv.CsvProposal;
import garboard.trial.log.LogLines;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;

/**
 * A log as a file, of a known format.
 *
 * @param path       where it is
 * @param format     what it is
 * @param firstLines its beginning, which told the format
 */
public record LogFile(Path path, LogFormat format, List<String> firstLines) {

    private static final int LOOKED_AT = 1 << 17;

    /**
     * Looks at a file.
     *
     * @throws LogFormatException when it is none that is read here
     */
    public static LogFile of(Path path) throws IOException {
        List<String> lines = firstLines(path);
        Optional<LogFormat> format = LogFormat.of(lines);
        if (format.isPresent()) {
            return new LogFile(path, format.get(), lines);
        }
        if (CsvProposal.of(lines, ZoneOffset.UTC).isPresent()) {
            return new LogFile(path, LogFormat.CSV, lines);
        }
        String found = lines.isEmpty() ? "the file is empty"
            : "its lines are of no format that is read, the first is \"" + beginning(lines.get(0)) + "\"";
        throw new LogFormatException(path.getFileName() + ": " + found + ". A candump log, NMEA 0183 sentences, Signal K deltas, or a table with "
            + "headings, units and a column with the time would be right.");
    }

    private static String beginning(String line) {
        String printable = line.replaceAll("\\p{Cntrl}", "?");
        return printable.substring(0, Math.min(60, printable.length()));
    }

    private static List<String> firstLines(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            byte[] head = in.readNBytes(LOOKED_AT);
            if (head.length > 1 && ((head[0] & 0xFF) == 0xFF && (head[1] & 0xFF) == 0xFE || (head[0] & 0xFF) == 0xFE && (head[1] & 0xFF) == 0xFF)) {
                throw new LogFormatException(path.getFileName() + " is written in UTF-16. Save it in UTF-8.");
            }
            List<String> lines = new ArrayList<>();
            LogLines all = new LogLines(new ByteArrayInputStream(head), LogProgress.NONE);
            while (lines.size() < LogFormat.MOST_LINES && all.next()) {
                lines.add(all.text());
            }
            if (head.length == LOOKED_AT && lines.size() < LogFormat.MOST_LINES && lines.size() > 1) {
                lines.remove(lines.size() - 1); // cut by our looking, not by its writer
            }
            return lines;
        }
    }

    /**
     * {@return a reader for it; a table is read by the proposed mapping}
     *
     * @throws LogFormatException when it is a table and no mapping can be proposed
     */
    public LogReader reader(LogOptions options) throws LogFormatException {
        if (format != LogFormat.CSV) {
            return format.reader(options);
        }
        CsvProposal proposal = proposal(options.zone()).orElseThrow(() -> new LogFormatException(path.getFileName() + " has no column with a time."));
        return reader(options, proposal.mapping());
    }

    /** {@return a reader for a table by a mapping that a person has settled} */
    public LogReader reader(LogOptions options, CsvMapping mapping) {
        return new CsvLogReader(options, mapping);
    }

    /** {@return how a table might be read, nothing for other formats} */
    public Optional<CsvProposal> proposal(ZoneId zone) {
        return format == LogFormat.CSV ? CsvProposal.of(firstLines, zone) : Optional.empty();
    }

    /** {@return how a table of the same headings was read before} */
    public Optional<CsvMapping> remembered(CsvMappings mappings) throws IOException {
        Optional<CsvProposal> proposal = proposal(ZoneOffset.UTC);
        return proposal.isPresent() ? mappings.of(proposal.get().mapping().headings()) : Optional.empty();
    }

    /** {@return the text of the beginning, for showing it} */
    public String head() {
        return String.join("\n", firstLines);
    }
}
