// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Voltage;

/** Size class of a battery installation by the power of its charger. */
public enum ChargerClass {
    SMALL, MODERATE, LARGE;

    private static final double LARGE_ABOVE_W = 2000;
    private static final double SMALL_BELOW_W = 200;

    /** Highest charging current times rated battery voltage: the figure that both rules class by. */
    public static Power power(Current highestCharging, Voltage ratedBattery) {
        return Power.of(Argument.notNegative("highest charging current", highestCharging) * Argument.positive("rated battery voltage", ratedBattery));
    }

    /** Two classes: large above 2 kW, else small ({@link BatterySources#CHARGER_CLASS_SUBCHAPTER_T}). */
    public static ChargerClass subchapterT(Power charger) {
        return Argument.notNegative("charger power", charger) > LARGE_ABOVE_W ? LARGE : SMALL;
    }

    /** Three classes: small below 0.2 kW, large above 2 kW, both ends moderate ({@link BatterySources#CHARGER_CLASS_SUBCHAPTER_J}). */
    public static ChargerClass subchapterJ(Power charger) {
        double powerW = Argument.notNegative("charger power", charger);
        if (powerW > LARGE_ABOVE_W) {
            return LARGE;
        }
        return powerW < SMALL_BELOW_W ? SMALL : MODERATE;
    }
}
