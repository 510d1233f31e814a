// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import java.util.List;

import garboard.checks.Check;

/** The checks of the exhaust, by the practice that they belong to. */
public final class ExhaustChecks {

    private ExhaustChecks() {
    }

    /** 46 CFR subchapter T, small passenger vessels. */
    public static List<Check<?>> smallPassenger() {
        return List.of(ExhaustDryPartsLagged.check(), ExhaustHotSurfaceByLaw.check(), ExhaustClearOfCombustibles.check(),
            ExhaustWaterFullLength.check(), ExhaustGasTightByLaw.check(), ExhaustBulkheadsSealed.check());
    }

    /** Voluntary standards, as quoted. */
    public static List<Check<?>> standards() {
        return List.of(ExhaustSurfaceTemperature.check(), ExhaustTemperatureAlarm.check(), ExhaustHoseStandardMarked.check(),
            ExhaustHoseForGasoline.check(), ExhaustClamps.check(), ExhaustMufflerMarked.check(), ExhaustGasTight.check());
    }

    /** Handbooks, trade press, common practice, and what follows from physics: along the run, from the riser to the outlet. */
    public static List<Check<?>> handbook() {
        return List.of(ExhaustOwnSystem.check(), ExhaustSpillOverHeight.check(), ExhaustInherentlySafe.check(), ExhaustInjectionOnFallingLeg.check(),
            ExhaustInjectionPointsDown.check(), ExhaustInjectionDrop.check(), ExhaustElbowInspected.check(), ExhaustWeightOffManifold.check(),
            ExhaustDryBoreOfTurbine.check(), ExhaustAlarmSetting.check(), ExhaustHoseTemperature.check(), ExhaustFall.check(),
            ExhaustFallTrimmed.check(), ExhaustSagFree.check(), ExhaustSupportSpacing.check(), ExhaustBoreOfPorts.check(), ExhaustWetBore.check(),
            ExhaustLengthToBore.check(), ExhaustBendRadius.check(), ExhaustClampBandWidth.check(), ExhaustHoseAge.check(),
            ExhaustLiftMufflerOnGasoline.check(), ExhaustMufflerLowest.check(), ExhaustMufflerDistance.check(),
            ExhaustMufflerNearCentreline.check(), ExhaustMufflerDrainPlug.check(), ExhaustLiftHeight.check(), ExhaustDrainBack.check(),
            ExhaustMufflerVolume.check(), ExhaustMufflerLevelAfterStop.check(), ExhaustCrankingBudget.check(), ExhaustCrankingTotal.check(),
            ExhaustCrestHeight.check(), ExhaustCrestHeightHeeled.check(), ExhaustSeparatorHeight.check(), ExhaustSeparatorDrainFalls.check(),
            ExhaustSeparatorDrainSeacock.check(), ExhaustOutletHeight.check(), ExhaustOutletHeeled.check(), ExhaustSubmergedOutletCrest.check(),
            ExhaustAntiSurge.check(), ExhaustOutletClearOfOpenings.check(), ExhaustOutletClearOfPlatform.check(), ExhaustTestTap.check(),
            ExhaustTestTapDistance.check(), ExhaustBackPressureOnPaper.check(), ExhaustBackPressure.check(), ExhaustBackPressureReserve.check(),
            ExhaustBackPressureLoad.check(), ExhaustBackPressureDrift.check());
    }
}
