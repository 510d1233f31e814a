// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Temperature;

/**
 * Exhaust gas cooled by the injected water. What evaporates is left out, so the water comes out a little too warm.
 *
 * @param flow of the gas, 0 or more
 * @param specificHeat more than 0
 * @param before temperature of the gas before injection
 * @param mixed temperature of the gas after, no more than before
 */
public record GasCooling(MassFlow flow, SpecificHeat specificHeat, Temperature before, Temperature mixed) {

    /** Usual specific heat of the gas. Derived here. */
    public static final SpecificHeat USUAL_SPECIFIC_HEAT = SpecificHeat.of(1100);

    public GasCooling {
        Argument.notNegative("gas flow", flow);
        Argument.positive("specific heat", specificHeat);
        if (mixed.isMoreThan(before)) {
            throw OutOfRangeException.of("mixed temperature", mixed, "no more than the temperature before injection, " + before);
        }
    }

    /** Gas that has not cooled yet. */
    public static GasCooling from(MassFlow flow, Temperature before) {
        return new GasCooling(flow, USUAL_SPECIFIC_HEAT, before, before);
    }

    public GasCooling to(Temperature temperature) {
        return new GasCooling(flow, specificHeat, before, temperature);
    }

    /** Heat that the gas gives to the water: m cp dT. */
    public Power heat() {
        return Power.of(flow.si() * specificHeat.si() * (before.si() - mixed.si()));
    }
}
