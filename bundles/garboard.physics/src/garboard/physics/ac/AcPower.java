// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.ReactivePower;
import garboard.quantity.Voltage;

/** Power, current and power factor ({@link AcSources#BASIC}); voltages between lines, balanced load. */
public final class AcPower {

    private AcPower() {
    }

    /** S / U, three-phase S / (sqrt(3) U). */
    public static Current current(ApparentPower apparent, Voltage line, PhaseSystem phases) {
        return Current.of(Argument.notNegative("apparent power", apparent) / (phases.factor * Argument.positive("voltage", line)));
    }

    /** U I, three-phase sqrt(3) U I. */
    public static ApparentPower apparent(Voltage line, Current current, PhaseSystem phases) {
        return ApparentPower.of(phases.factor * Argument.notNegative("voltage", line) * Argument.notNegative("current", current));
    }

    /** S pf. */
    public static Power active(ApparentPower apparent, Ratio powerFactor) {
        return Power.of(Argument.notNegative("apparent power", apparent) * factor(powerFactor));
    }

    /** P / pf. */
    public static ApparentPower apparent(Power active, Ratio powerFactor) {
        return ApparentPower.of(Argument.notNegative("active power", active) / factor(powerFactor));
    }

    /** P tan(acos(pf)), lagging counted positive. */
    public static ReactivePower reactive(Power active, Ratio powerFactor) {
        return ReactivePower.of(Argument.notNegative("active power", active) * Math.tan(Math.acos(factor(powerFactor))));
    }

    /** sqrt(P^2 + Q^2). */
    public static ApparentPower apparent(Power active, ReactivePower reactive) {
        return ApparentPower.of(Math.hypot(active.si(), reactive.si()));
    }

    /** P / S; throws where P is the larger. */
    public static Ratio powerFactor(Power active, ApparentPower apparent) {
        double apparentVa = Argument.positive("apparent power", apparent);
        return Ratio.of(Argument.between("active power", active, 0, apparentVa, "0 up to the apparent power of " + apparent) / apparentVa);
    }

    private static double factor(Ratio powerFactor) {
        return Argument.between("power factor", powerFactor, 1e-6, 1, "more than 0, at most 1");
    }
}
