// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.util.Optional;

import garboard.trial.store.TimeRange;

/**
 * A stretch of the log that looks like a step of the trial. A person confirms it, moves its ends, or refuses it.
 *
 * @param fromNs begin
 * @param toNs   end
 * @param loadSi the middle of its load readings, in the SI unit
 * @param steady the longest window to its end in which the load is steady
 * @param remark why there is none, or empty
 */
public record StepProposal(long fromNs, long toNs, double loadSi, Optional<TimeRange> steady, String remark) {

    private static final double NS_PER_S = 1e9;

    /** {@return how long it lasts, in seconds} */
    public double durationS() {
        return (toNs - fromNs) / NS_PER_S;
    }
}
