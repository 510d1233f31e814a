// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import java.util.List;

import garboard.checks.Check;

/** The checks of the siphon break, by the practice that they belong to. */
public final class SiphonChecks {

    private SiphonChecks() {
    }

    /** Voluntary standards, as quoted. */
    public static List<Check<?>> standards() {
        return List.of(SiphonAboveWater.check(), SiphonHeightRolling.check(), SiphonOnPressureSide.check());
    }

    /** Handbooks, trade press, common practice, and what follows from physics. */
    public static List<Check<?>> handbook() {
        return List.of(SiphonInjectionHeight.check(), SiphonInjectionHeightHeeled.check(), SiphonInjectionHeightAdvised.check(),
            SiphonLoopVented.check(), SiphonHeightUpright.check(), SiphonHeightDesign.check(), SiphonHeightHeeled.check(),
            SiphonNearCentreline.check(), SiphonAfterHeatExchanger.check(), SiphonAtHighestPoint.check(), SiphonVentHoseEnd.check(),
            SiphonVentHoseEndHeight.check(), SiphonVentDischargeHeight.check(), SiphonVentHoseFree.check(), SiphonBleedBore.check(),
            SiphonBleedInSight.check(), SiphonBore.check(), SiphonNotAboveElectrics.check(), SiphonServiced.check(), SiphonValveTested.check());
    }
}
