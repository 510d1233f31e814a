// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.physics.statistics.Steadiness;
import garboard.physics.statistics.Trace;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;

/**
 * Whether a temperature stands still at a load: what it changes in ten minutes by the line through the last readings. Common practice: coolant and
 * exhaust by 2 K at most, the compartment by 1 K.
 *
 * @param field the temperature
 * @param change change in ten minutes; nothing while there are fewer than three readings over ten minutes
 * @param permitted the most it may change
 */
public record Settling(EAttribute field, Optional<TemperatureDifference> change, TemperatureDifference permitted) {

    private static final TimeSpan WINDOW = TimeSpan.valueOf("10 min");
    private static final int LEAST_READINGS = 3;
    private static final Map<EAttribute, TemperatureDifference> PERMITTED = Map.of(
        Literals.READING__COOLANT_TEMPERATURE, TemperatureDifference.valueOf("2 K"),
        Literals.READING__EXHAUST_DRY, TemperatureDifference.valueOf("2 K"),
        Literals.READING__COMPARTMENT_TEMPERATURE, TemperatureDifference.valueOf("1 K"));
    private static final List<EAttribute> ORDER = List.of(Literals.READING__COOLANT_TEMPERATURE, Literals.READING__EXHAUST_DRY,
        Literals.READING__COMPARTMENT_TEMPERATURE);

    public boolean settled() {
        return change.filter(found -> Math.abs(found.si()) <= permitted.si() * (1 + 1e-9)).isPresent();
    }

    /** {@return how each temperature stands that was read at a load} */
    public static List<Settling> of(LoadStep step) {
        return ORDER.stream().filter(field -> step.getReadings().stream().anyMatch(reading -> reading.eIsSet(field)))
            .map(field -> of(field, step)).toList();
    }

    private static Settling of(EAttribute field, LoadStep step) {
        return new Settling(field, change(trace(field, step)), PERMITTED.get(field));
    }

    /** The readings with a time, earliest first; of two at one time the later entry. */
    private static List<Trace.Sample<Temperature>> trace(EAttribute field, LoadStep step) {
        var readings = new ArrayList<>(step.getReadings().stream()
            .filter(reading -> reading.getAt() != null && reading.eIsSet(field)).toList());
        readings.sort(java.util.Comparator.comparing(Reading::getAt, OffsetDateTime.timeLineOrder()));
        var samples = new ArrayList<Trace.Sample<Temperature>>();
        for (Reading reading : readings) {
            TimeSpan at = TimeSpan.of(Duration.between(readings.getFirst().getAt(), reading.getAt()).toMillis() / 1000.0);
            if (!samples.isEmpty() && !samples.getLast().at().isLessThan(at)) {
                samples.removeLast();
            }
            samples.add(new Trace.Sample<>(at, (Temperature) reading.eGet(field)));
        }
        return samples;
    }

    /** Readings may be further apart than the window needs; then the last three make the line. */
    private static Optional<TemperatureDifference> change(List<Trace.Sample<Temperature>> samples) {
        if (samples.size() < LEAST_READINGS) {
            return Optional.empty();
        }
        double lastThreeS = samples.getLast().at().si() - samples.get(samples.size() - LEAST_READINGS).at().si();
        double windowS = Math.max(WINDOW.si(), lastThreeS);
        var trace = new Trace<>(samples);
        if (trace.duration().si() < windowS) {
            return Optional.empty();
        }
        double change = Steadiness.changeOverLast(TimeSpan.of(windowS), trace).si();
        return Optional.of(TemperatureDifference.of(change * WINDOW.si() / windowS));
    }
}
