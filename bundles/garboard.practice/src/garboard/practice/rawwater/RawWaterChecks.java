// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import java.util.List;

import garboard.checks.Check;

/** The checks of the raw-water circuit by the authority behind them, each list in the order of a walk from the hull to the pump. */
public final class RawWaterChecks {

    private RawWaterChecks() {
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(SeacockOfPassengerVessel.check(), StrainerOfPassengerVessel.check(), ClampsOfPassengerVessel.check(),
            PipeOfPassengerVessel.check(), BilgeAlarmOfPassengerVessel.check());
    }

    /** Voluntary standards and class rules, as far as they were seen. */
    public static List<Check<?>> standards() {
        return List.of(SeacockFitted.check(), SeacockKind.check(), SeacockLeverShowsState.check(), SeacockReachable.check(),
            SeacockStandsLoad.check(), MetalsResistSeaWater.check(), NoCopperInAluminiumHull.check(), GratingArea.check());
    }

    /** Handbooks, trade press, common practice and physics. */
    public static List<Check<?>> handbook() {
        return List.of(PickUpDoesNotScoop.check(), RamBelowLoop.check(), InletPressureAtPump.check(), IntakeStaysWet.check(),
            OwnIntake.check(), NoDischargeAheadOfIntake.check(), SeacockInFloodingZone.check(), SeacockFullBore.check(),
            SeacockWorksFreely.check(), SeacockTagAtStartPanel.check(), SeacockShutWhenNotInUse.check(), StrainerBesideSeacock.check(),
            StrainerCanBeLookedInto.check(), StrainerBasketArea.check(), StrainerHoleSize.check(), SuctionHoseStaysOpen.check(),
            SuctionHoseClamps.check(), SuctionBoreChain.check(), SuctionVelocity.check(), SuctionHead.check(), SuctionVacuum.check(),
            ImpellerPiecesFound.check(), PumpCarriesTheHeat.check(), FlowReachesWhatTheSetNeeds.check(), DischargeVelocity.check(),
            OverboardTemperatureForecast.check(), OverboardTemperatureMeasured.check(), FlowAlarm.check());
    }
}
