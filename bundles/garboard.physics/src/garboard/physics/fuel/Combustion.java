// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.quantity.HeatingValue;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;

/**
 * An engine burning fuel: conservation of mass and energy, derived here.
 *
 * @param shaft power at the shaft, more than 0
 * @param consumption fuel for a unit of shaft energy, more than 0
 * @param airFuelRatio mass of air to mass of fuel, 5 to 100
 */
public record Combustion(Power shaft, SpecificConsumption consumption, Ratio airFuelRatio) {

    public Combustion {
        Argument.positive("shaft power", shaft);
        Argument.positive("specific consumption", consumption);
        Argument.between("air-fuel ratio", airFuelRatio, 5, 100, "5 to 100");
    }

    /** Shaft power behind an electrical output: P / efficiency of the alternator, 0.3 to 1. */
    public static Power shaftPower(Power electrical, Ratio alternatorEfficiency) {
        return Power.of(Argument.positive("electrical power", electrical)
            / Argument.between("alternator efficiency", alternatorEfficiency, 0.3, 1, "0.3 to 1"));
    }

    public MassFlow fuelFlow() {
        return MassFlow.of(shaft.si() * consumption.si());
    }

    public MassFlow airFlow() {
        return MassFlow.of(fuelFlow().si() * airFuelRatio.si());
    }

    /** Fuel and air together: P BSFC (1 + AFR). */
    public MassFlow exhaustFlow() {
        return MassFlow.of(fuelFlow().si() * (1 + airFuelRatio.si()));
    }

    /** Power in the fuel. */
    public Power fuelPower(HeatingValue lowerHeatingValue) {
        return Power.of(fuelFlow().si() * Argument.positive("heating value", lowerHeatingValue));
    }
}
