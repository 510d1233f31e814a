// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

import garboard.physics.ac.AcCalculations;
import garboard.physics.air.AirCalculations;
import garboard.physics.battery.BatteryCalculations;
import garboard.physics.cable.CableCalculations;
import garboard.physics.calculation.Calculation;
import garboard.physics.exhaust.ExhaustCalculations;
import garboard.physics.fuel.FuelCalculations;
import garboard.physics.geometry.GeometryCalculations;
import garboard.physics.pipe.PipeCalculations;
import garboard.physics.rating.RatingCalculations;
import garboard.physics.rawwater.RawWaterCalculations;
import garboard.physics.statistics.MeasurementCalculations;

/** What calculations are grouped by, in the order of reading. */
public enum Subject {
    GEOMETRY(GeometryCalculations::all, "vessel"), PIPE(PipeCalculations::all, "rawWater"), EXHAUST(ExhaustCalculations::all, "exhaust"),
    RAW_WATER(RawWaterCalculations::all, "rawWater"), FUEL(FuelCalculations::all, "fuelSupply"), AIR(AirCalculations::all, "ventilation"),
    BATTERY(BatteryCalculations::all, "startingBattery"), CABLE(CableCalculations::all, "startingBattery"), AC(AcCalculations::all, "acOutput"),
    RATING(RatingCalculations::all, "generatorSet"), MEASUREMENT(MeasurementCalculations::all, "trial");

    private final Supplier<List<Calculation>> supplier;
    private final String part;

    Subject(Supplier<List<Calculation>> supplier, String part) {
        this.supplier = supplier;
        this.part = part;
    }

    /** {@return its calculations, in the order of reading; made anew at each call} */
    public List<Calculation> calculations() {
        return supplier.get();
    }

    /** {@return the name of the part of a record that it mostly speaks of} */
    public String part() {
        return part;
    }

    static Stream<Subject> stream() {
        return Arrays.stream(values());
    }
}
