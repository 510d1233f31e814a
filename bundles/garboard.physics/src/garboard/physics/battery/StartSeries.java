// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Energy;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

/**
 * Starts in a row without recharging ({@link BatterySources#STARTING_CHARGE}).
 *
 * @param starts how many
 * @param crankEach how long each of them cranks
 * @param cranking current meanwhile
 */
public record StartSeries(int starts, TimeSpan crankEach, Current cranking) {

    public StartSeries {
        Argument.atLeastOne("starts", starts);
        Argument.positive("cranking time", crankEach);
        Argument.positive("cranking current", cranking);
    }

    /** Charge drawn: n t I. */
    public Charge charge() {
        return Charge.of(starts * crankEach.si() * cranking.si());
    }

    /** Energy that one start draws at the voltage held meanwhile: U I t. */
    public Energy energyPerStart(Voltage whileCranking) {
        return Energy.of(Argument.positive("voltage while cranking", whileCranking) * cranking.si() * crankEach.si());
    }

    /** Least rated capacity when the series may take a share of it; common practice: 20 %. */
    public Charge capacityNeeded(Ratio shareOfCapacity) {
        double share = Argument.between("share of the capacity", shareOfCapacity, 1e-6, 1, "more than 0, at most 100 %");
        return Charge.of(charge().si() / share);
    }
}
