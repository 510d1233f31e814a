// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.ReactivePower;

/**
 * Sum of a load list in one condition; of loads that exclude each other only the largest belongs in it ({@link AcSources#DEMAND_SUM}).
 *
 * @param connected sum of the inputs
 * @param demand active power
 * @param reactive reactive power
 */
public record DemandSum(Power connected, Power demand, ReactivePower reactive) {

    public static DemandSum of(List<ConnectedLoad> loads) {
        if (loads.isEmpty()) {
            throw OutOfRangeException.of("loads", 0, "1 or more");
        }
        return new DemandSum(Power.of(loads.stream().mapToDouble(load -> load.input().si()).sum()),
                Power.of(loads.stream().mapToDouble(load -> load.demand().si()).sum()),
                ReactivePower.of(loads.stream().mapToDouble(load -> load.reactiveDemand().si()).sum()));
    }

    public ApparentPower apparent() {
        return AcPower.apparent(demand, reactive);
    }

    /** P / S; throws where there is no demand. */
    public Ratio powerFactor() {
        return AcPower.powerFactor(demand, apparent());
    }

    /** Demand over connected power; throws where nothing is connected. */
    public Ratio overallFactor() {
        return Ratio.of(demand.si() / Argument.positive("connected power", connected));
    }

    /** Least rating of which the demand is at most a share ({@link AcSources#SIZING_WINDOW}). */
    public Power leastRating(Ratio highestShare) {
        return Power.of(demand.si() / Argument.between("highest share of the rating", highestShare, 0.01, 1, "1 to 100 %"));
    }

    /** Demand as a share of a rating. */
    public Ratio shareOf(Power rating) {
        return Ratio.of(demand.si() / Argument.positive("rated power", rating));
    }
}
