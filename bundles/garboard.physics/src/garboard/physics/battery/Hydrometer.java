// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Specific gravity of the electrolyte of flooded lead-acid cells. */
public final class Hydrometer {

    /** Reference temperature of US hydrometers, 80 degF. */
    private static final double REFERENCE_K = 273.15 + 80.0 / 1.8 - 32 / 1.8;
    /** 0.004 for each 10 degF. */
    private static final double CORRECTION_PER_K = 0.004 / (10 / 1.8);
    /** Textbook constant of the flooded cell. */
    private static final double CELL_CONSTANT_V = 0.84;

    private Hydrometer() {
    }

    /**
     * Reading reduced to 26.7 degC (80 degF): SG + 0.004 per 10 degF above it ({@link BatterySources#HYDROMETER_CORRECTION}). Valid for readings
     * 1.000 to 1.400 and electrolyte from -30 to 60 degC; throws outside.
     */
    public static Ratio correctedTo80F(Ratio reading, Temperature electrolyte) {
        double gravity = gravity(reading);
        double temperatureK = Argument.between("electrolyte temperature", electrolyte, 243.15, 333.15, "-30 to 60 degC");
        return Ratio.of(gravity + CORRECTION_PER_K * (temperatureK - REFERENCE_K));
    }

    /** Highest less lowest cell; more than 0.025 is unserviceable (US Army TM 9-6140-200-14). */
    public static Ratio cellSpread(List<Ratio> cells) {
        if (cells.isEmpty()) {
            throw OutOfRangeException.of("cells", 0, "1 or more");
        }
        var gravities = cells.stream().mapToDouble(Hydrometer::gravity).summaryStatistics();
        return Ratio.of(gravities.getMax() - gravities.getMin());
    }

    /** Open-circuit voltage n (SG + 0.84) V at about 25 degC ({@link BatterySources#FLOODED_EMF}). */
    public static Voltage floodedVoltage(Ratio gravity, int cells) {
        return Voltage.of(Argument.atLeastOne("cells", cells) * (gravity(gravity) + CELL_CONSTANT_V));
    }

    /** Specific gravity that gives an open-circuit voltage: the inverse of {@link #floodedVoltage}; throws where it would leave 1.000 to 1.400. */
    public static Ratio gravityFor(Voltage openCircuit, int cells) {
        int count = Argument.atLeastOne("cells", cells);
        double voltageV = Argument.between("open-circuit voltage", openCircuit, 1.84 * count, 2.24 * count, "1.84 to 2.24 V for each cell");
        return Ratio.of(voltageV / count - CELL_CONSTANT_V);
    }

    private static double gravity(Ratio reading) {
        return Argument.between("specific gravity", reading, 1.000, 1.400, "1.000 to 1.400");
    }
}
