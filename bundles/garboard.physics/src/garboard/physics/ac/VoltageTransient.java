// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * How far the voltage swings when load is taken on or thrown off ({@link AcSources#VOLTAGE_TRANSIENT}).
 *
 * @param reached the extreme r.m.s. voltage of a half cycle or cycle
 */
public record VoltageTransient(Voltage reached) {

    public VoltageTransient {
        Argument.notNegative("extreme voltage", reached);
    }

    public static VoltageTransient reached(Voltage extreme) {
        return new VoltageTransient(extreme);
    }

    /** (U extreme - U rated) / U rated, negative for a dip. Not against the reading before the step. */
    public Ratio againstRated(Voltage rated) {
        double ratedV = Argument.positive("rated voltage", rated);
        return Ratio.of((reached.si() - ratedV) / ratedV);
    }
}
