// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.physics.ac.AcCalculations;
import garboard.physics.air.AirCalculations;
import garboard.physics.battery.BatteryCalculations;
import garboard.physics.cable.CableCalculations;
import garboard.physics.exhaust.ExhaustCalculations;
import garboard.physics.fuel.FuelCalculations;
import garboard.physics.geometry.GeometryCalculations;
import garboard.physics.pipe.PipeCalculations;
import garboard.physics.rating.RatingCalculations;
import garboard.physics.rawwater.RawWaterCalculations;
import garboard.physics.statistics.MeasurementCalculations;

/** All calculations that are offered under a name. */
public final class Calculations {

    private Calculations() {
    }

    /** In the order of reading: wet side first, then electrical. */
    public static List<Calculation> all() {
        return Stream.of(GeometryCalculations.all(), PipeCalculations.all(), ExhaustCalculations.all(), RawWaterCalculations.all(),
            FuelCalculations.all(), AirCalculations.all(), BatteryCalculations.all(), CableCalculations.all(), AcCalculations.all(),
            RatingCalculations.all(), MeasurementCalculations.all()).flatMap(List::stream).toList();
    }

    /** The calculation of that name. */
    public static Optional<Calculation> find(String name) {
        return all().stream().filter(calculation -> calculation.name().equals(name)).findFirst();
    }
}
