// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

/** Raw-water flow by shaft power: trade figures, printed in a chandler's guide for each 100 bhp. Quoted. */
public enum FlowPerPower {

    /** 65 to 70 L/min for 100 bhp. */
    HEAT_EXCHANGER(65, 70),

    /** 36 to 39 L/min for 100 bhp: direct raw-water cooling runs hotter. */
    DIRECT(36, 39);

    private static final Power HUNDRED_HORSEPOWER = Power.of(100, "hp");

    private final double leastLitresPerMinute;
    private final double greatestLitresPerMinute;

    FlowPerPower(double leastLitresPerMinute, double greatestLitresPerMinute) {
        this.leastLitresPerMinute = leastLitresPerMinute;
        this.greatestLitresPerMinute = greatestLitresPerMinute;
    }

    public VolumeFlow least(Power shaft) {
        return scaled(leastLitresPerMinute, shaft);
    }

    public VolumeFlow greatest(Power shaft) {
        return scaled(greatestLitresPerMinute, shaft);
    }

    private static VolumeFlow scaled(double litresPerMinute, Power shaft) {
        return VolumeFlow.of(litresPerMinute * Argument.positive("shaft power", shaft) / HUNDRED_HORSEPOWER.si(), "L/min");
    }
}
