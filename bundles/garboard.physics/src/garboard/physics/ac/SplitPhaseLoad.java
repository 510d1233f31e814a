// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * Currents in the two legs of a 120/240 V set, in any order ({@link AcSources#SPLIT_PHASE}).
 *
 * @param legA 0 or more
 * @param legB 0 or more
 */
public record SplitPhaseLoad(Current legA, Current legB) {

    public SplitPhaseLoad {
        Argument.notNegative("current of leg A", legA);
        Argument.notNegative("current of leg B", legB);
    }

    /** What each leg of a set may carry: S rated / (2 U leg). */
    public static Current legLimit(ApparentPower rated, Voltage leg) {
        return Current.of(Argument.positive("rated apparent power", rated) / (2 * Argument.positive("leg voltage", leg)));
    }

    /** Current in the neutral for like power factors: the difference. */
    public Current neutral() {
        return Current.of(Math.abs(legA.si() - legB.si()));
    }

    /** (I max - I min) / I max; none without load. */
    public Ratio imbalance() {
        double most = heavierLeg().si();
        return Ratio.of(most == 0 ? 0 : neutral().si() / most);
    }

    public Current heavierLeg() {
        return Current.of(Math.max(legA.si(), legB.si()));
    }

    /** U leg (I A + I B). */
    public ApparentPower total(Voltage leg) {
        return ApparentPower.of(Argument.positive("leg voltage", leg) * (legA.si() + legB.si()));
    }

    /** Load of the heavier leg as a share of what a leg of the set may carry. */
    public Ratio heavierLegShare(ApparentPower rated, Voltage leg) {
        return Ratio.of(heavierLeg().si() / legLimit(rated, leg).si());
    }
}
