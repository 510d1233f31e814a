// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * Rating of a generator as its plate gives it.
 *
 * @param rated active power
 * @param powerFactor rated power factor
 * @param line voltage between lines
 * @param phases how it is wired
 */
public record GeneratorPlate(Power rated, Ratio powerFactor, Voltage line, PhaseSystem phases) {

    private static final double DEVICE_AND_CABLE = 1.15;

    public GeneratorPlate {
        Argument.positive("rated power", rated);
        Argument.between("power factor", powerFactor, 0.1, 1, "0.1 to 1");
        Argument.positive("voltage", line);
    }

    /** P / (U pf), three-phase P / (sqrt(3) U pf). */
    public Current fullLoad() {
        return AcPower.current(AcPower.apparent(rated, powerFactor), line, phases);
    }

    /** 115 % of full load: the most that the overcurrent device may be set to, without a next size up ({@link AcSources#GENERATOR_DEVICE}). */
    public Current highestDevice() {
        return atLeast115();
    }

    /** 115 % of full load: the least current that the generator cable has to be allowed ({@link AcSources#GENERATOR_DEVICE}). */
    public Current leastCable() {
        return atLeast115();
    }

    /** The same generator at a share of its power, as after derating; the limits shrink with it. */
    public GeneratorPlate derated(Ratio share) {
        return new GeneratorPlate(Power.of(rated.si() * Argument.between("derating", share, 0.01, 1, "1 to 100 %")), powerFactor, line, phases);
    }

    private Current atLeast115() {
        return Current.of(DEVICE_AND_CABLE * fullLoad().si());
    }
}
