// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.checks.Situation;
import garboard.model.FuelKind;
import garboard.physics.fuel.Combustion;
import garboard.physics.fuel.TypicalEngine;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;

/** The set at full load: its own figures where they are entered, else those of a typical engine. */
public final class SetAtFullLoad {

    private SetAtFullLoad() {
    }

    /**
     * Fuel and air at the rated shaft power. Reads shaft power and fuel, and what is entered of consumption, air-fuel ratio and
     * aspiration.
     */
    public static Combustion combustion(Situation<?> s) {
        TypicalEngine typical = typical(s);
        SpecificConsumption consumption = s.set().getSpecificFuelConsumption();
        Ratio airFuelRatio = s.set().getAirFuelRatio();
        return new Combustion(s.set().getShaftPower(), consumption == null ? typical.consumption() : consumption,
            airFuelRatio == null ? typical.airFuelRatio() : airFuelRatio);
    }

    /** The typical engine that is nearest to the set. Reads the fuel, and the aspiration where it is entered. */
    public static TypicalEngine typical(Situation<?> s) {
        if (s.set().getFuel() == FuelKind.GASOLINE) {
            return TypicalEngine.GASOLINE_INJECTED;
        }
        return switch (s.set().getAspiration()) {
            case TURBOCHARGED, TURBOCHARGED_CHARGE_AIR_COOLED -> TypicalEngine.DIESEL_TURBOCHARGED;
            case NATURALLY_ASPIRATED, NOT_ENTERED -> TypicalEngine.DIESEL_NATURALLY_ASPIRATED;
        };
    }
}
