// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import java.time.LocalDate;

import garboard.checks.Comparison;

/** A date up to which a device is good. */
final class Expiry {

    private Expiry() {
    }

    /** Holds on the day itself. */
    static Comparison compare(LocalDate expires, LocalDate today) {
        boolean good = !today.isAfter(expires);
        return Comparison.holds((good ? "good until " : "out of date since ") + expires, good);
    }
}
