// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

/** Engine room air in the style of ISO 8861, which is written for ships. The whole from memory; the text was not at hand. */
public final class Iso8861Style {

    /** Rise to reckon with. */
    public static final TemperatureDifference RISE = TemperatureDifference.of(12.5);

    private Iso8861Style() {
    }

    /** Air for the heat at the rise of 12.5 K. */
    public static VolumeFlow heatFlow(Power heat) {
        return VentilationFlow.forRise(heat, RISE);
    }

    /** Total from combustion air V_c and heat: V_c + max(0, V_heat - 0.4 V_c), and not below 1.5 V_c. */
    public static VolumeFlow total(VolumeFlow combustionAir, Power heat) {
        double combustion = Argument.notNegative("combustion air", combustionAir);
        double both = combustion + Math.max(0, heatFlow(heat).si() - 0.4 * combustion);
        return VolumeFlow.of(Math.max(both, 1.5 * combustion));
    }

    /** Heat that a generator engine radiates: 0.396 P^0.70, both in kW. @param shaft more than 0 */
    public static Power generatorRadiation(Power shaft) {
        return Power.of(0.396 * Math.pow(Power.of(Argument.positive("shaft power", shaft)).in("kW"), 0.70), "kW");
    }
}
