// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.VolumeFlow;

/** Air that keeps the hydrogen of a charging battery below its explosive limit: two published formulas. */
public final class HydrogenVentilation {

    private static final double SECONDS_PER_HOUR = 3600;

    private HydrogenVentilation() {
    }

    /** Q = 0.05 n Igas C / 1000 in m3/h, Igas in mA/Ah and C in Ah ({@link BatterySources#HYDROGEN_EN_50272}). */
    public static VolumeFlow en50272(GassingRate gassing, int cells, Charge capacity) {
        double capacityAh = Argument.positive("capacity", capacity) / 3600;
        double flowM3PerH = 0.05 * Argument.atLeastOne("cells", cells) * gassing.milliamperePerAmpereHour * capacityAh / 1000;
        return VolumeFlow.of(flowM3PerH / SECONDS_PER_HOUR);
    }

    /** Free area of each of the two openings, inlet and outlet, of a naturally ventilated box: 28 cm2 for each m3/h (EN 50272-2). */
    public static Area naturalOpening(VolumeFlow flow) {
        return Area.of(28e-4 * Argument.notNegative("air flow", flow) * SECONDS_PER_HOUR);
    }

    /** q = 0.11 I n in m3/h, I by {@link #chargingCurrentSubchapterJ} ({@link BatterySources#HYDROGEN_SUBCHAPTER_J}). */
    public static VolumeFlow subchapterJ(Current charging, int cells) {
        return VolumeFlow.of(0.11 * Argument.notNegative("charging current", charging) * Argument.atLeastOne("cells", cells) / SECONDS_PER_HOUR);
    }

    /** The current for {@link #subchapterJ}: the larger of the current in the gassing stage and a quarter of the charger's maximum. */
    public static Current chargingCurrentSubchapterJ(ChargerCurrents charger) {
        return Current.of(Math.max(charger.gassingStage().si(), charger.maximum().si() / 4));
    }

    /**
     * Currents of a charger.
     *
     * @param gassingStage at the end of the charge, while gas is made
     * @param maximum the most it can give, not less than the other
     */
    public record ChargerCurrents(Current gassingStage, Current maximum) {

        public ChargerCurrents {
            Argument.between("current in the gassing stage", gassingStage, 0, Argument.positive("maximum current", maximum),
                    "0 up to the charger's maximum of " + maximum);
        }
    }
}
