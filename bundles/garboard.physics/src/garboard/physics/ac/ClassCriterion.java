// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Optional;

import garboard.physics.Status;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** What a performance class limits ({@link AcSources#PERFORMANCE_CLASS}): at most the figure, without its sign. */
public enum ClassCriterion {
    FREQUENCY_DROOP, STEADY_FREQUENCY_BAND, TRANSIENT_FREQUENCY_DROP, TRANSIENT_FREQUENCY_RISE, FREQUENCY_RECOVERY_TIME, STEADY_VOLTAGE_DEVIATION,
    VOLTAGE_UNBALANCE, TRANSIENT_VOLTAGE_DROP, TRANSIENT_VOLTAGE_RISE, VOLTAGE_RECOVERY_TIME, VOLTAGE_MODULATION;

    private static final ReferenceTable TABLE = ReferenceTable.load("performance-class-limits.csv");
    /** DGUV Information 203-032 annex 5, sets up to 10 kW. */
    private static final double SMALL_SET_G1_VOLTAGE = 0.10;
    private static final String SPARK_IGNITION_DROP = "TRANSIENT_FREQUENCY_DROP_SPARK_IGNITION";

    /** Limit of a class for a set: a {@link TimeSpan} for recovery times, else a {@link Ratio}; nothing where it is by agreement. */
    public Optional<Quantity<?>> limit(PerformanceClass wanted, SetTraits set) {
        if (this == STEADY_VOLTAGE_DEVIATION && wanted == PerformanceClass.G1 && set.upTo10Kilowatt()) {
            return Optional.of(Ratio.of(SMALL_SET_G1_VOLTAGE));
        }
        return figure(row(set), wanted).map(figure -> isTime() ? TimeSpan.of(figure) : Ratio.of(figure / 100));
    }

    /** How sure we are of the figures of this row. */
    public Status status(SetTraits set) {
        return Status.valueOf(TABLE.text(TABLE.rowOf("criterion", row(set)).orElseThrow(), "status"));
    }

    /** Width of the band around the new steady frequency that ends the recovery, as a share of the rated frequency (from memory). */
    public static Ratio frequencyToleranceBand(PerformanceClass wanted) {
        return Ratio.of(figure("FREQUENCY_TOLERANCE_BAND", wanted).orElseThrow() / 100);
    }

    /** Least range to each side over which the voltage can be set, as a share of the rated voltage. */
    public static Ratio voltageSettingRange(PerformanceClass wanted) {
        return Ratio.of(figure("VOLTAGE_SETTING_RANGE", wanted).orElseThrow() / 100);
    }

    boolean isTime() {
        return this == FREQUENCY_RECOVERY_TIME || this == VOLTAGE_RECOVERY_TIME;
    }

    private String row(SetTraits set) {
        return this == TRANSIENT_FREQUENCY_DROP && set.sparkIgnition() ? SPARK_IGNITION_DROP : name();
    }

    private static Optional<Double> figure(String row, PerformanceClass wanted) {
        return TABLE.figure(TABLE.rowOf("criterion", row).orElseThrow(), wanted.name());
    }
}
