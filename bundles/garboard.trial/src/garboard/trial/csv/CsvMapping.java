// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How to read one kind of table: a person settles it once, and it is remembered by the headings ({@link CsvMappings}).
 *
 * @param separator   what parts the cells
 * @param decimalSign point or comma
 * @param headings    the row of headings; what stands above it is not read
 * @param time        where the time stands
 * @param columns     the columns to read; the others are told and left out
 */
public record CsvMapping(char separator, char decimalSign, List<String> headings, CsvTime time, List<CsvColumn> columns) {

    /**
     * @throws IllegalArgumentException when a column has no place in the row, or the decimal sign is the separator
     */
    public CsvMapping {
        headings = List.copyOf(headings);
        columns = List.copyOf(columns);
        if (separator == decimalSign) {
            throw new IllegalArgumentException("cells are parted by " + separator + ", which cannot be the decimal sign, too");
        }
        int width = headings.size();
        if (time.column() >= width || time.second() >= width || columns.stream().anyMatch(column -> column.index() >= width)) {
            throw new IllegalArgumentException("there are " + width + " headings, but a column beyond the last is named");
        }
    }

    /** {@return the headings that are neither a time nor a column to be read} */
    public List<String> unread() {
        return IntStream.range(0, headings.size())
            .filter(i -> i != time.column() && i != time.second() && columns.stream().noneMatch(column -> column.index() == i))
            .mapToObj(headings::get).toList();
    }

    /** The same with other columns. */
    public CsvMapping reading(List<CsvColumn> others) {
        return new CsvMapping(separator, decimalSign, headings, time, others);
    }

    /** The same with another time. */
    public CsvMapping timed(CsvTime other) {
        return new CsvMapping(separator, decimalSign, headings, other, columns);
    }
}
