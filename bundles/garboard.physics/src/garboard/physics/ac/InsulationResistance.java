// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Insulation resistance of a winding reduced to 40 degC. The two methods differ widely: which insulation it is decides the verdict. */
public final class InsulationResistance {

    private static final double REFERENCE_K = 313;
    private static final double CELSIUS_ZERO_K = 273.15;

    private InsulationResistance() {
    }

    /** R 0.5^((40 - t) / 10) for thermoplastic insulation ({@link AcSources#INSULATION_HALVING}). Valid from 0 to 80 degC; throws outside. */
    public static Resistance at40ByHalving(Resistance measured, Temperature winding) {
        double celsius = Argument.between("winding temperature", winding, 273.15, 353.15, "0 to 80 degC") - CELSIUS_ZERO_K;
        return Resistance.of(Argument.notNegative("insulation resistance", measured) * Math.pow(0.5, (40 - celsius) / 10));
    }

    /**
     * R exp(-1245 (1/(t + 273) - 1/313)) for thermosetting insulation ({@link AcSources#INSULATION_THERMOSET}). Valid from 10 to 40 degC; throws
     * outside.
     */
    public static Resistance at40Thermosetting(Resistance measured, Temperature winding) {
        double celsius = Argument.between("winding temperature", winding, 283.15, 313.15, "10 to 40 degC") - CELSIUS_ZERO_K;
        return Resistance.of(Argument.notNegative("insulation resistance", measured) * Math.exp(-1245 * (1 / (celsius + 273) - 1 / REFERENCE_K)));
    }

    /** Least resistance of older windings at 40 degC: (kV + 1) Mohm (IEEE 43, quoted by a third party); later ones below 1 kV are held to 5 Mohm. */
    public static Resistance leastOlderWinding(Voltage rated) {
        return Resistance.of((Argument.positive("rated voltage", rated) / 1000 + 1) * 1e6);
    }
}
