// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Density;
import garboard.quantity.Power;
import garboard.quantity.SpecificHeat;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

/** Air that carries heat out of a compartment: V = Phi / (rho cp dT), conservation of energy. */
public final class VentilationFlow {

    /** Air of a warm compartment, about 39 degC. ISO 8861 style, from memory. */
    public static final Density WARM_AIR = Density.of(1.13);

    /** ISO 8861 style, from memory. */
    public static final SpecificHeat AIR_HEAT = SpecificHeat.of(1010);

    private VentilationFlow() {
    }

    /** Least flow that keeps to a rise over the outside. */
    public static VolumeFlow forRise(Power heat, TemperatureDifference rise) {
        return VolumeFlow.of(Argument.notNegative("heat", heat) / (WARM_AIR.si() * AIR_HEAT.si() * Argument.positive("rise", rise)));
    }

    /** Rise that a flow leaves. */
    public static TemperatureDifference rise(Power heat, VolumeFlow flow) {
        return TemperatureDifference.of(Argument.notNegative("heat", heat) / (WARM_AIR.si() * AIR_HEAT.si() * Argument.positive("flow", flow)));
    }
}
