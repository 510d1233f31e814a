// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.physics.statistics.Trace;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;
import garboard.trial.store.ReadingStore;

/** Channels of a store as traces, for the calculations that judge them: steadiness, hunting, recovery. */
public final class StoredTraces {

    private static final double NS_PER_S = 1e9;

    private StoredTraces() {
    }

    /**
     * {@return a channel from a time on and before another, its times counted from there} A reading that is not later than the one before it
     * is left out, because a trace cannot step back; the log's tally has told of it. Nothing where fewer than two are left. The trace is held in
     * memory: ask for minutes, not for a day.
     *
     * @param kind of the channel's measurand, or of the field it is assigned to
     */
    public static <Q extends Quantity<Q>> Optional<Trace<Q>> of(ReadingStore store, int channel, Kind<Q> kind, long fromNs,
        long toNs) throws IOException {
        List<Trace.Sample<Q>> samples = new ArrayList<>();
        long[] last = {Long.MIN_VALUE};
        store.read(channel, fromNs, toNs, (timeNs, si) -> {
            if (timeNs > last[0]) {
                last[0] = timeNs;
                samples.add(new Trace.Sample<>(TimeSpan.of((timeNs - fromNs) / NS_PER_S), kind.of(si)));
            }
        });
        return samples.size() < 2 ? Optional.empty() : Optional.of(new Trace<>(samples));
    }
}
