// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Parts a line into cells by RFC 4180. Line by line, because in a log no cell goes over the end of its line, and a stray quote must not
 * swallow the rest of the file.
 */
final class CsvCells {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final CSVFormat format;

    CsvCells(char separator) {
        format = CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreSurroundingSpaces(true).get();
    }

    /** {@return the cells without blanks around them; nothing for a line whose quotes do not match} */
    Optional<List<String>> of(String line) {
        String text = line.startsWith(BYTE_ORDER_MARK) ? line.substring(1) : line;
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<CSVRecord> rows = parser.getRecords();
            return rows.size() == 1 ? Optional.of(rows.get(0).stream().map(String::strip).toList()) : Optional.empty();
        } catch (IOException | UncheckedIOException broken) {
            return Optional.empty();
        }
    }
}
