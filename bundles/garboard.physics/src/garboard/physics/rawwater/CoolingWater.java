// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.Density;
import garboard.quantity.Power;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

/**
 * Water that takes heat away: Phi = rho Q cp dT, conservation of energy.
 *
 * @param density more than 0
 * @param specificHeat more than 0
 */
public record CoolingWater(Density density, SpecificHeat specificHeat) {

    /** Usual rise through the heat exchanger, 8 to 15 K in practice. Common practice. */
    public static final TemperatureDifference USUAL_RISE = TemperatureDifference.of(12);

    public CoolingWater {
        Argument.positive("density", density);
        Argument.positive("specific heat", specificHeat);
    }

    /** Sea water of this temperature, 0 to 40 degC. */
    public static CoolingWater sea(Temperature temperature) {
        return new CoolingWater(SeaWater.at(temperature).density(), SeaWater.specificHeat(temperature));
    }

    /** Flow that takes a heat away with a rise: the least flow for a greatest rise. */
    public VolumeFlow flow(Power heat, TemperatureDifference rise) {
        return VolumeFlow.of(Argument.notNegative("heat", heat) / (heatPerVolume() * Argument.positive("rise", rise)));
    }

    /** Rise that a heat makes in a flow. */
    public TemperatureDifference rise(Power heat, VolumeFlow flow) {
        return TemperatureDifference.of(Argument.notNegative("heat", heat) / (heatPerVolume() * Argument.positive("flow", flow)));
    }

    /** Heat that a flow takes away with a rise: what a measured flow and rise say of the set. */
    public Power heat(VolumeFlow flow, TemperatureDifference rise) {
        return Power.of(Argument.notNegative("flow", flow) * heatPerVolume() * Argument.notNegative("rise", rise));
    }

    private double heatPerVolume() {
        return density.si() * specificHeat.si();
    }
}
