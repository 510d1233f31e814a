// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import garboard.trial.log.Decimal;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogLines;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;
import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;

/** Reads tables, one row a line, by a mapping. Where the row of headings does not come, nothing is read and each line is unreadable. */
public final class CsvLogReader implements LogReader {

    /** How recorders write that there is no value. */
    private static final Set<String> NO_VALUE = Set.of("", "-", "--", "---", "nan", "n/a", "na", "null", "none", "#n/a", "ol");

    private final LogOptions options;
    private final CsvMapping mapping;

    /** A reader for tables of one kind; of the options only the start is of use, the mapping has its own zone. */
    public CsvLogReader(LogOptions options, CsvMapping mapping) {
        this.options = options;
        this.mapping = mapping;
    }

    @Override
    public void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException {
        LogTally tally = intake.tally();
        LogLines lines = new LogLines(in, progress);
        CsvCells cells = new CsvCells(mapping.separator());
        Rows rows = new Rows(mapping, options, intake);
        boolean begun = false;
        while (lines.next()) {
            tally.line(lines.number());
            if (lines.isCut()) {
                tally.count(Mishap.OVERLONG_LINE);
            } else if (!lines.isBlank() && lines.buffer()[lines.start()] != '#') {
                Optional<List<String>> row = cells.of(lines.text());
                boolean headings = !begun && row.isPresent() && row.get().equals(mapping.headings());
                begun |= headings;
                if (!headings && (begun || !isAbove(row))) {
                    rows.take(begun ? row : Optional.empty());
                }
            }
        }
    }

    /** {@return whether a line before the headings is one that may stand there: narrower than they are} */
    private boolean isAbove(Optional<List<String>> row) {
        return row.isPresent() && row.get().size() < mapping.headings().size();
    }

    /** The rows below the headings. */
    private static final class Rows {

        private final CsvMapping mapping;
        private final LogIntake intake;
        private final LogTally tally;
        private final CsvStamps stamps;
        private final int[] channels;

        Rows(CsvMapping mapping, LogOptions options, LogIntake intake) {
            this.mapping = mapping;
            this.intake = intake;
            tally = intake.tally();
            stamps = new CsvStamps(mapping.time(), mapping.decimalSign(), options, tally);
            channels = mapping.columns().stream().mapToInt(column -> intake.channel(column.channel())).toArray();
            mapping.unread().forEach(tally::foreign);
        }

        void take(Optional<List<String>> row) {
            if (row.isEmpty() || row.get().size() > mapping.headings().size()) {
                tally.count(Mishap.UNREADABLE_LINE);
                return;
            }
            switch (stamps.read(row.get())) {
                case UNREADABLE -> tally.count(Mishap.UNREADABLE_TIME);
                case AMBIGUOUS -> tally.count(Mishap.AMBIGUOUS_TIME);
                case OK -> values(row.get());
            }
        }

        private void values(List<String> row) {
            tally.time(stamps.ns());
            tally.messages("row", 1);
            for (int i = 0; i < channels.length; i++) {
                CsvColumn column = mapping.columns().get(i);
                value(column, channels[i], column.index() < row.size() ? row.get(column.index()) : "");
            }
        }

        private void value(CsvColumn column, int channel, String cell) {
            if (NO_VALUE.contains(cell.toLowerCase(Locale.ROOT))) {
                intake.missing(channel, Mishap.NOT_AVAILABLE);
                return;
            }
            OptionalDouble number = Decimal.parse(cell, mapping.decimalSign());
            if (number.isEmpty()) {
                intake.missing(channel, Mishap.UNREADABLE_VALUE);
                return;
            }
            double si;
            try {
                si = column.si(number.getAsDouble());
            } catch (IllegalArgumentException cannotBe) { // such as a temperature below absolute zero
                intake.missing(channel, Mishap.IMPOSSIBLE);
                return;
            }
            intake.value(stamps.ns(), channel, si);
        }
    }
}
