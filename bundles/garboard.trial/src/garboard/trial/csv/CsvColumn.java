// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.util.Objects;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Measurand;

/**
 * What a column holds.
 *
 * @param index     its place in the row, from 0
 * @param heading   its name in the file
 * @param measurand what it measures
 * @param unit      the unit of its numbers, one of the measurand's kind; empty for a code
 * @param line      which conductors
 */
public record CsvColumn(int index, String heading, Measurand measurand, String unit, AcLine line) {

    /**
     * @throws IllegalArgumentException when the unit is none of the measurand's kind
     */
    public CsvColumn {
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(line, "line");
        if (index < 0) {
            throw new IllegalArgumentException("the place of column " + heading + " is " + index + ", must be 0 or more");
        }
        String of = unit;
        measurand.kind().ifPresent(kind -> {
            if (!kind.accepts(of) && !(of.isEmpty() && kind.unitMayBeLeftOut())) {
                throw new IllegalArgumentException("column " + heading + ": " + (of.isEmpty() ? "no unit" : of + " is no unit") + " of a "
                    + kind.name() + "; right would be " + String.join(", ", kind.units()));
            }
        });
    }

    /** {@return the SI value of a number in the column} */
    double si(double number) {
        return measurand.kind().map(kind -> kind.of(number, unit.isEmpty() ? "1" : unit).si()).orElse(number);
    }

    /** {@return the channel of its readings} */
    Channel channel() {
        return new Channel(measurand, line, "", "", new Channel.Origin("", "", heading));
    }
}
