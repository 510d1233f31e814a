// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

/** From the first reading to the last, both included, in ns. */
public record TimeRange(long firstNs, long lastNs) {

    TimeRange with(TimeRange other) {
        return new TimeRange(Math.min(firstNs, other.firstNs), Math.max(lastNs, other.lastNs));
    }
}
