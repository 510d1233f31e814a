// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.time.ZonedDateTime;
import java.util.Objects;

import garboard.quantity.UnitSystem;

/**
 * What the reader wants of a report. What people entered stays in the units they gave, whichever system is chosen.
 *
 * @param units the system of units for everything computed, and for the value beside each entered one
 * @param paper the paper to lay out for
 * @param printedAt printed on every page; the only thing in a report that changes from one run to the next
 * @param programVersion version of the program that writes it
 */
public record ReportOptions(UnitSystem units, Paper paper, ZonedDateTime printedAt, String programVersion) {
    public ReportOptions {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(printedAt, "printedAt");
        Objects.requireNonNull(programVersion, "programVersion");
    }
}
