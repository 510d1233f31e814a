// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Ventilation;
import garboard.physics.air.DuctOpening;
import garboard.physics.air.VentilationFlow;
import garboard.quantity.PressureDifference;

/** The limit for the depression of the compartment, and the way in by which it is reckoned. */
final class Depression {

    /** 0.25 inH2O; 125 Pa is where it has to stop. Common practice. */
    private static final PressureDifference USUAL = PressureDifference.of(63, "Pa");

    private Depression() {
    }

    static Limit<PressureDifference> limit(Situation<Ventilation> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumDepression), USUAL, "common practice");
    }

    static DuctOpening opening() {
        return new DuctOpening(DuctOpening.USUAL_LOSS, VentilationFlow.WARM_AIR);
    }
}
