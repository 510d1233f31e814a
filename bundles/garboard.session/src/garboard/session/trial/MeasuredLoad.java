// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.physics.OutOfRangeException;
import garboard.physics.ac.AcPower;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * What a set gave at a reading, and which share of its rating that is: the power that was read, else volts times amperes times the power factor,
 * else, without a power factor, the apparent power against the apparent rating.
 *
 * @param power power in W, or apparent power in VA
 * @param share share of the rating, where the rating is entered
 * @param from what it was reckoned from
 */
public record MeasuredLoad(Quantity<?> power, Optional<Ratio> share, From from) {

    /** What the load was reckoned from. */
    public enum From {
        POWER, VOLTS_AMPERES_AND_FACTOR, VOLTS_AND_AMPERES
    }

    /** {@return the load, where the reading tells enough of it} */
    public static Optional<MeasuredLoad> of(Reading reading, CommissioningRecord record) {
        Optional<GeneratorSet> set = Optional.ofNullable(record.getGeneratorSet());
        Optional<Power> rated = set.map(GeneratorSet::getRatedPower).filter(power -> power.si() > 0);
        if (reading.getPower() != null) {
            return Optional.of(new MeasuredLoad(reading.getPower(), share(reading.getPower(), rated), From.POWER));
        }
        try {
            Optional<ApparentPower> apparent = apparent(reading, set.map(GeneratorSet::getPhases).orElse(PhaseSystem.NOT_ENTERED));
            return reading.getPowerFactor() == null
                ? apparent.map(found -> new MeasuredLoad(found, share(found, ratedApparent(set)), From.VOLTS_AND_AMPERES))
                : apparent.map(found -> AcPower.active(found, reading.getPowerFactor()))
                    .map(found -> new MeasuredLoad(found, share(found, rated), From.VOLTS_AMPERES_AND_FACTOR));
        } catch (OutOfRangeException nonsense) {
            return Optional.empty(); // a negative current, a power factor of 8: the field itself says so
        }
    }

    private static Optional<Ratio> share(Quantity<?> power, Optional<? extends Quantity<?>> rated) {
        return rated.map(full -> Ratio.of(power.si() / full.si()));
    }

    private static Optional<ApparentPower> ratedApparent(Optional<GeneratorSet> set) {
        return set.map(GeneratorSet::getRatedApparentPower).filter(power -> power.si() > 0);
    }

    /** A single phase has one voltage, line to neutral; two legs each their own to neutral; three phases three between lines. */
    private static Optional<ApparentPower> apparent(Reading reading, PhaseSystem phases) {
        Voltage first = reading.getVoltage1();
        return switch (phases) {
            case SINGLE_PHASE -> product(first, reading.getCurrent1(), garboard.physics.ac.PhaseSystem.SINGLE_PHASE);
            case SPLIT_PHASE -> product(first, reading.getCurrent1(), garboard.physics.ac.PhaseSystem.SINGLE_PHASE)
                .flatMap(leg -> product(Optional.ofNullable(reading.getVoltage2()).orElse(first), reading.getCurrent2(),
                    garboard.physics.ac.PhaseSystem.SINGLE_PHASE).map(other -> ApparentPower.of(leg.si() + other.si())));
            case THREE_PHASE -> product(mean(List.of(Optional.ofNullable(first), Optional.ofNullable(reading.getVoltage2()),
                Optional.ofNullable(reading.getVoltage3()))), meanOfAll(reading.getCurrent1(), reading.getCurrent2(), reading.getCurrent3()),
                garboard.physics.ac.PhaseSystem.THREE_PHASE);
            case NOT_ENTERED -> Optional.empty();
        };
    }

    private static Optional<ApparentPower> product(Voltage voltage, Current current, garboard.physics.ac.PhaseSystem phases) {
        return voltage == null || current == null ? Optional.empty() : Optional.of(AcPower.apparent(voltage, current, phases));
    }

    /** The mean of the voltages that were read; null for none, as an empty field is. */
    private static Voltage mean(List<Optional<Voltage>> voltages) {
        List<Voltage> read = voltages.stream().flatMap(Optional::stream).toList();
        return read.isEmpty() ? null : Voltage.of(read.stream().mapToDouble(Voltage::si).average().orElseThrow());
    }

    /** The mean current, when every one was read: what the other phases carry cannot be guessed. */
    private static Current meanOfAll(Current... currents) {
        return Arrays.stream(currents).anyMatch(Objects::isNull) ? null
            : Current.of(Arrays.stream(currents).mapToDouble(Current::si).average().orElseThrow());
    }
}
