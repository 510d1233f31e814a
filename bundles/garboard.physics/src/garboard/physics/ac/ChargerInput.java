// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * Mains side of a battery charger ({@link AcSources#CHARGER_INPUT}).
 *
 * @param direct voltage it charges at
 * @param charging current it gives
 * @param efficiency share of the input power that reaches the battery
 * @param powerFactor of the input
 */
public record ChargerInput(Voltage direct, Current charging, Ratio efficiency, Ratio powerFactor) {

    public ChargerInput {
        Argument.positive("charging voltage", direct);
        Argument.positive("charging current", charging);
        Argument.between("efficiency", efficiency, 0.01, 1, "1 to 100 %");
        Argument.between("power factor", powerFactor, 0.01, 1, "0.01 to 1");
    }

    /** A charger without losses at unity power factor; the next steps make it real. */
    public static ChargerInput of(Voltage direct, Current charging) {
        return new ChargerInput(direct, charging, Ratio.of(1), Ratio.of(1));
    }

    public ChargerInput withEfficiency(Ratio share) {
        return new ChargerInput(direct, charging, share, powerFactor);
    }

    public ChargerInput withPowerFactor(Ratio factor) {
        return new ChargerInput(direct, charging, efficiency, factor);
    }

    /** U I / (efficiency pf). */
    public ApparentPower apparent() {
        return ApparentPower.of(direct.si() * charging.si() / (efficiency.si() * powerFactor.si()));
    }
}
