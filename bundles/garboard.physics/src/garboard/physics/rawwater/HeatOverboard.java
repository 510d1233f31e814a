// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

/**
 * All the heat that leaves with the raw water: T_overboard = T_sea + (coolant + exhaust) / (rho Q cp).
 *
 * @param sea temperature of the intake water
 * @param coolant heat from the heat exchanger, 0 or more
 * @param exhaust heat from the gas, 0 or more
 * @param water properties of the water
 */
public record HeatOverboard(Temperature sea, Power coolant, Power exhaust, CoolingWater water) {

    public HeatOverboard {
        Argument.notNegative("coolant heat", coolant);
        Argument.notNegative("exhaust heat", exhaust);
    }

    /** Sea water with the heat of the coolant, and none from the exhaust yet. */
    public static HeatOverboard ofCoolant(Power heat, Temperature sea) {
        return new HeatOverboard(sea, heat, Power.of(0), CoolingWater.sea(sea));
    }

    public HeatOverboard withExhaust(Power heat) {
        return new HeatOverboard(sea, coolant, heat, water);
    }

    public HeatOverboard withExhaust(GasCooling gas) {
        return withExhaust(gas.heat());
    }

    /** The same with other properties of the water than those at the sea temperature. */
    public HeatOverboard withWater(CoolingWater other) {
        return new HeatOverboard(sea, coolant, exhaust, other);
    }

    public Power total() {
        return Power.of(coolant.si() + exhaust.si());
    }

    /** Rise in the mixing elbow. */
    public TemperatureDifference elbowRise(VolumeFlow flow) {
        return water.rise(exhaust, flow);
    }

    public Temperature temperature(VolumeFlow flow) {
        return Temperature.of(sea.si() + water.rise(total(), flow).si());
    }

    /** Least flow that keeps to a temperature overboard. @param limit more than the sea temperature */
    public VolumeFlow leastFlow(Temperature limit) {
        if (!limit.isMoreThan(sea)) {
            throw OutOfRangeException.of("limit", limit, "more than the sea temperature, " + sea);
        }
        return water.flow(total(), TemperatureDifference.of(limit.si() - sea.si()));
    }
}
