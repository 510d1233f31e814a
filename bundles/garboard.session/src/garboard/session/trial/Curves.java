// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.model.CustomaryUnits;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;

/**
 * The readings of one topic as curves, in the unit in which people speak of it.
 *
 * @param topic what they are of
 * @param along what they are drawn along
 * @param unit unit of the values
 * @param curves one for each field that was read, with at least one point
 * @param limits what the values are held against, each once
 * @param from the moment from which minutes count, when drawn along time
 * @param withoutPlace how many values cannot be drawn for want of a time or a load
 */
public record Curves(ReadingTopic topic, Along along, String unit, List<Curve> curves, List<ReadingLimit> limits, Optional<OffsetDateTime> from,
        int withoutPlace) {

    /** What curves are drawn along: minutes since the first reading, or load in per cent of the rating. */
    public enum Along {
        TIME, LOAD
    }

    /** The values of one field, in the order of the axis. */
    public record Curve(EAttribute field, double[] along, double[] values) {
    }

    private record Point(double along, double value) {
    }

    public static Curves of(ReadingTopic topic, Along along, CommissioningRecord record, Evaluation evaluation, CustomaryUnits units) {
        String unit = units.unit(topic.fields().getFirst());
        Optional<OffsetDateTime> from = LoadLadder.steps(record).stream().flatMap(step -> step.getReadings().stream()).map(Reading::getAt)
            .filter(at -> at != null).min(OffsetDateTime.timeLineOrder());
        var curves = new ArrayList<Curve>();
        var limits = new ArrayList<ReadingLimit>();
        int withoutPlace = 0;
        for (EAttribute field : topic.fields()) {
            var points = new ArrayList<Point>();
            int read = 0;
            for (LoadStep step : LoadLadder.steps(record)) {
                for (Reading reading : step.getReadings()) {
                    if (reading.eGet(field) instanceof Quantity<?> value) {
                        read++;
                        OptionalDouble place = along == Along.LOAD ? load(step, reading, record) : minutes(reading, from);
                        place.ifPresent(at -> points.add(new Point(at, value.in(unit))));
                    }
                }
            }
            withoutPlace += read - points.size();
            if (!points.isEmpty()) {
                points.sort(Comparator.comparingDouble(Point::along));
                curves.add(new Curve(field, points.stream().mapToDouble(Point::along).toArray(), points.stream().mapToDouble(Point::value).toArray()));
                limits.addAll(ReadingLimit.of(field, record, evaluation));
            }
        }
        return new Curves(topic, along, unit, List.copyOf(curves), List.copyOf(limits), from, withoutPlace);
    }

    /** The load that was measured, else the one that the step was set to. */
    private static OptionalDouble load(LoadStep step, Reading reading, CommissioningRecord record) {
        return MeasuredLoad.of(reading, record).flatMap(MeasuredLoad::share).or(() -> Optional.ofNullable(step.getLoad())).map(Ratio::si)
            .map(share -> OptionalDouble.of(share * 100)).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble minutes(Reading reading, Optional<OffsetDateTime> from) {
        return reading.getAt() == null || from.isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(Duration.between(from.get(), reading.getAt()).toMillis() / 60000.0);
    }
}
