// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** Apparent power that a motor draws while it starts. */
public final class MotorStart {

    private MotorStart() {
    }

    /** By the locked-rotor current of the plate: U I, three-phase sqrt(3) U I. */
    public static ApparentPower lockedRotor(Voltage line, Current lockedRotor, PhaseSystem phases) {
        return AcPower.apparent(line, lockedRotor, phases);
    }

    /** Star-delta starting: a third of the direct start (common practice). */
    public static ApparentPower starDelta(ApparentPower direct) {
        return ApparentPower.of(Argument.notNegative("direct start", direct) / 3);
    }

    /** Soft starter: its current limit, as a multiple of the running current, times the running apparent power; throws outside 1 to 8. */
    public static ApparentPower softStarter(ApparentPower running, Ratio currentLimit) {
        double multiple = Argument.between("current limit", currentLimit, 1, 8, "1 to 8 times the running current");
        return ApparentPower.of(multiple * Argument.notNegative("running apparent power", running));
    }
}
