// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

/** Kinds of starting circuit with the resistance they may have at 20 degC ({@link CableSources#CRANKING_CIRCUIT}). */
public enum StarterDuty {
    /** 12 V, light and medium duty: 0.20 V per 100 A. */
    LIGHT_12_V(2.0e-3),
    /** 12 V, heavy duty: 0.10 V per 100 A. */
    HEAVY_12_V(1.0e-3),
    /** 24 V, light and medium duty: 0.40 V per 100 A. */
    LIGHT_24_V(4.0e-3),
    /** 24 to 32 V, heavy duty: 0.17 V per 100 A. */
    HEAVY_24_V(1.7e-3);

    private final double resistanceOhm;

    StarterDuty(double resistanceOhm) {
        this.resistanceOhm = resistanceOhm;
    }

    /** Permitted resistance from the battery posts to the starter and back, joints included. */
    public Resistance allowedResistance() {
        return Resistance.of(resistanceOhm);
    }

    /** Permitted drop at a cranking current. */
    public Voltage allowedDrop(Current cranking) {
        return Voltage.of(resistanceOhm * Argument.positive("cranking current", cranking));
    }

    /** Resistance of a circuit by the drop measured at a current. */
    public static Resistance measuredResistance(Voltage drop, Current cranking) {
        return Resistance.of(Argument.notNegative("voltage drop", drop) / Argument.positive("cranking current", cranking));
    }
}
