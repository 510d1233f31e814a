// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.List;

import garboard.checks.Check;

/** The checks of the AC output by the authority behind them, each list in the order of a walk from the set to its loads. */
public final class AcChecks {

    private AcChecks() {
    }

    /** 33 CFR 183 subpart I. */
    public static List<Check<?>> federal() {
        return List.of(OutputProtectedByLaw.check(), MainDevicePlaceByLaw.check(), MainDeviceRatingByLaw.check(), MainDeviceVoltageByLaw.check());
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(NamePlateOnPassengerVessel.check(), BuiltForTheHeat.check(), MetersOnPassengerVessel.check(),
            MainDeviceRatingOnPassengerVessel.check(), SourcesInterlockedOnPassengerVessel.check(), NeutralBondOnPassengerVessel.check(),
            GroundDetectionOnPassengerVessel.check(), GroundDetectionOfDualVoltage.check(), ProtectiveSizeOnPassengerVessel.check(),
            PartsGroundedOnPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(NoLoadVoltage.check(), NoLoadFrequency.check(), MainDevicePlaceByIso.check(), DoublePole.check(), FaultToGroundTrips.check(),
            ShortCircuitTrips.check(), NeutralBondByIso.check(), ProtectiveSizeByNfpa.check(), ProtectiveSizeByIso.check(), ProtectiveResistance.check(),
            Insulation.check(), WindingInsulation.check(), PolarityIndicator.check(), ResidualTripCurrent.check(), ResidualTripTime.check(),
            ResidualTripTimeOfBoats.check(), ShoreInletResidualDevice.check());
    }

    /** Handbooks, common practice, laws that do not bind, and physics. */
    public static List<Check<?>> handbook() {
        return List.of(NamePlateInAnyBoat.check(), MetersInAnyBoat.check(), NoLoadOvervoltage.check(), OutputProtectedInAnyBoat.check(),
            MainDeviceRatingInAnyBoat.check(), MainDeviceVoltageInAnyBoat.check(), PolesOpenTogether.check(), OutputCableFor115.check(),
            OutputDrop.check(), OutputDropMeasured.check(), SourcesInterlocked.check(), SelectorTested.check(), SelectorPoles.check(),
            SelectorRating.check(), NoBackFeed.check(), NeutralBondedOnce.check(), NeutralGroundConductor.check(), GroundDetectionInAnyBoat.check(),
            PartsGrounded.check(), PolarityTested.check(), ResidualDeviceFitted.check(), DemandWithinRating.check(), DemandWithinApparentPower.check(),
            DemandLeavesReserve.check(), DemandLoadsTheEngine.check(), DemandWithinDerating.check(), PhaseWithinRating.check(), PhasesBalanced.check(),
            LegCurrent.check(), LegsBalanced.check(), MotorStartKeepsContactors.check(), MotorStartWithinClass.check(), NonLinearLoad.check(),
            ExclusionNamesALoad.check());
    }
}
