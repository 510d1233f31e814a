// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.CustomaryUnits;
import garboard.model.GarboardFactory;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.UnitSystem;
import garboard.trial.store.ReadingStore;
import garboard.trial.store.StoredChannel;
import garboard.trial.store.TimeRange;

/**
 * Turns what a person has confirmed, steps and an assignment of channels, into readings for the record. A reading is a mean over a part of
 * the steady window and says so; a channel that is silent there leaves its field not entered.
 */
public final class TrialReadings {

    private static final long NS_PER_S = 1_000_000_000L;
    private static final double S_PER_MINUTE = 60;
    private static final int MOST_DECIMALS = 4;

    private final ReadingStore store;
    private final Map<EAttribute, StoredChannel> channels;
    private final CustomaryUnits units;

    /** For the readings of a store. */
    public TrialReadings(ReadingStore store, Assignment assignment, UnitSystem system) {
        this.store = store;
        channels = assignment.in(store);
        units = CustomaryUnits.of(system);
    }

    /**
     * {@return a load step with readings}
     *
     * @param step    confirmed
     * @param ratedSi what the load is a share of, in the SI unit of the load; empty where the plate is not entered
     * @param count   of readings, spread over the steady window; none where there is no window
     */
    public LoadStep step(StepProposal step, Optional<Double> ratedSi, int count) throws IOException {
        LoadStep entered = GarboardFactory.eINSTANCE.createLoadStep();
        ratedSi.filter(rated -> rated > 0).ifPresent(rated -> entered.setLoad(Ratio.of(Math.rint(100 * step.loadSi() / rated), "%")));
        entered.setDwell(TimeSpan.of(Math.rint(10 * step.durationS() / S_PER_MINUTE) / 10, "min"));
        if (!step.remark().isEmpty()) {
            entered.setRemarks(step.remark());
        }
        if (step.steady().isPresent()) {
            entered.getReadings().addAll(over(step.steady().get(), count));
        }
        return entered;
    }

    /** {@return readings over equal parts of a window, each at the end of its part} */
    public List<Reading> over(TimeRange window, int count) throws IOException {
        if (count < 1) {
            throw new IllegalArgumentException(count + " readings, must be 1 or more");
        }
        List<Reading> readings = new ArrayList<>();
        double part = (double) (window.lastNs() - window.firstNs()) / count;
        for (int i = 0; i < count; i++) {
            readings.add(over(window.firstNs() + Math.round(i * part), window.firstNs() + Math.round((i + 1) * part)));
        }
        return readings;
    }

    private Reading over(long fromNs, long toNs) throws IOException {
        Reading reading = GarboardFactory.eINSTANCE.createReading();
        for (Map.Entry<EAttribute, StoredChannel> entry : channels.entrySet()) {
            Optional<WindowStatistics> window = WindowStatistics.of(store, entry.getValue().number(), fromNs, toNs);
            window.ifPresent(statistics -> reading.eSet(entry.getKey(), mean(entry.getKey(), statistics)));
        }
        if (!store.provenance().isRelative()) {
            reading.setAt(Instant.ofEpochSecond(Math.floorDiv(toNs, NS_PER_S)).atOffset(ZoneOffset.UTC));
        }
        reading.setInstruments(store.provenance().file());
        reading.setNote("Mean over " + TimeSpan.of(Math.rint((double) (toNs - fromNs) / NS_PER_S), "s") + " of the log.");
        return reading;
    }

    private Quantity<?> mean(EAttribute field, WindowStatistics window) {
        Kind<?> kind = Kind.ofType(field.getEAttributeType().getInstanceClass()).orElseThrow();
        String unit = units.unit(field);
        double mean = kind.of(window.mean()).in(unit);
        double oneOff = kind.of(window.mean() + window.deviation() / Math.sqrt(window.count())).in(unit) - mean;
        return kind.of(rounded(mean, oneOff), unit);
    }

    /** To no more decimals than the scatter of a mean allows. */
    private static double rounded(double value, double uncertainty) {
        int decimals = uncertainty > 0 ? (int) Math.ceil(-Math.log10(uncertainty)) : MOST_DECIMALS;
        return new BigDecimal(value).setScale(Math.max(0, Math.min(MOST_DECIMALS, decimals)), RoundingMode.HALF_EVEN).doubleValue();
    }
}
