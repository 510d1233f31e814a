// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.physics.rating.GeneratorAmbient;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/** 46 CFR 183.320(b): what a set that is built for less than 50 degC may give in its space. */
final class HotSpace {

    private static final Temperature BUILT_FOR = Temperature.of(50, "degC");

    private HotSpace() {
    }

    /** Whether the set is built for less than 50 degC, so that the temperature of its space matters. */
    static boolean matters(Situation<?> s) {
        return s.set().getDesignAmbient().isLessThan(BUILT_FOR);
    }

    /** Share of the rating on the plate; all of it where the plate gives the lower figure already. */
    static Ratio share(Situation<?> s) {
        boolean onThePlate = s.set().getPlateShowsDeratedPower() == Answer.YES;
        return !matters(s) || onThePlate ? Ratio.of(1)
            : GeneratorAmbient.DEGREES_40.shareIn(s.record().getVentilation().getDesignAmbient());
    }
}
