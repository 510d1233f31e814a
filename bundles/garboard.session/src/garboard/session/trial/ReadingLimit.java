// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static garboard.model.GarboardPackage.Literals.READING__BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.READING__BATTERY_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.READING__COMPARTMENT_DEPRESSION;
import static garboard.model.GarboardPackage.Literals.READING__COMPARTMENT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.READING__EXHAUST_MIXED;
import static garboard.model.GarboardPackage.Literals.READING__FUEL_VACUUM;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_FLOW;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_VACUUM;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.checks.Evaluation;
import garboard.checks.Limit;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.quantity.Quantity;
import garboard.report.MakersLimit;

/**
 * A limit to hold readings against: the maker's own, or that which a check used for the same quantity measured once.
 *
 * @param value the limit
 * @param atMost whether readings must not be above it; otherwise they must not be below
 * @param check id of the check that uses it; nothing for a limit of the maker
 * @param origin whose figure it is, as the check says it; empty for a limit of the maker
 */
public record ReadingLimit(Quantity<?> value, boolean atMost, Optional<String> check, String origin) {

    /** The checks that judge by one measurement what is read again and again at the trial. */
    private record Judged(EAttribute reading, String check, boolean atMost) {
    }

    private static final List<Judged> JUDGED = List.of(
        new Judged(READING__BACK_PRESSURE, "EXHAUST-BACK-PRESSURE", true),
        new Judged(READING__EXHAUST_MIXED, "RAWWATER-OVERBOARD-MEASURED", true),
        new Judged(READING__COMPARTMENT_TEMPERATURE, "VENT-COMPARTMENT-TEMPERATURE", true),
        new Judged(READING__COMPARTMENT_DEPRESSION, "VENT-DEPRESSION-MEASURED", true),
        new Judged(READING__FUEL_VACUUM, "FUEL-VACUUM-NOW", true),
        new Judged(READING__RAW_WATER_VACUUM, "RAWWATER-VACUUM-MEASURED", true),
        new Judged(READING__RAW_WATER_FLOW, "RAWWATER-FLOW-MEASURED", false),
        new Judged(READING__BATTERY_VOLTAGE, "BATTERY-OVERCHARGE", true));

    /** {@return the limits of a field of a reading, the maker's first} A figure that a check took from the maker stands once. */
    public static List<ReadingLimit> of(EAttribute reading, CommissioningRecord record, Evaluation evaluation) {
        var limits = new ArrayList<ReadingLimit>();
        MakersLimit.of(reading, record).ifPresent(maker -> limits.add(new ReadingLimit(maker.value(), maker.atMost(), Optional.empty(), "")));
        for (Judged judged : JUDGED) {
            if (judged.reading == reading) {
                evaluation.verdicts().stream().filter(verdict -> verdict.check().id().equals(judged.check)).map(Verdict::limit)
                    .flatMap(Optional::stream).findFirst().filter(limit -> fits(limit, reading) && !told(limit, limits))
                    .ifPresent(limit -> limits.add(new ReadingLimit(limit.value(), judged.atMost, Optional.of(judged.check), limit.origin())));
            }
        }
        return List.copyOf(limits);
    }

    private static boolean fits(Limit<?> limit, EAttribute reading) {
        return reading.getEAttributeType().getInstanceClass().isInstance(limit.value());
    }

    private static boolean told(Limit<?> limit, List<ReadingLimit> limits) {
        return limits.stream().anyMatch(other -> Math.abs(other.value.si() - limit.value().si()) <= 1e-9 * Math.abs(other.value.si()));
    }
}
