// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import java.util.List;

import garboard.checks.Check;

/** The checks of cables by the authority behind them, each list in the order of a walk along the cable from its source. */
public final class CableChecks {

    private CableChecks() {
    }

    /** 33 CFR 183 subpart I. */
    public static List<Check<?>> federal() {
        return List.of(LeastGaugeByLaw.check(), StrandedByLaw.check(), AmpacityBelow50VByLaw.check(), AmpacityFrom50VByLaw.check(),
            CircuitProtectedByLaw.check(), DevicePlaceByLaw.check(), DevicePlaceAtBatteryByLaw.check(), DeviceRatingByLaw.check(),
            DeviceRatingFrom50VByLaw.check(), DeviceVoltageByLaw.check(), ChafeProtectedByLaw.check(), ChargingDeviceByLaw.check(),
            CommonNegative.check());
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(LeastGaugeOnPassengerVessel.check(), SupportsOnPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(CrankingResistanceLight.check(), CrankingResistanceHeavy.check(), CrankingDropByJ541.check(), DropComputed.check(),
            DropMeasured.check(), LeastGaugeByIso.check(), AmpacityByIso.check(), DevicePlaceAtBattery.check(), DeviceRatingByIso.check(),
            SupportsByIso.check(), RingTerminals.check(), LugsOnStud.check());
    }

    /** Common practice and physics. */
    public static List<Check<?>> handbook() {
        return List.of(ConductorSizeReadable.check(), StrandedInAnyBoat.check(), CrankingDropInTheField.check(), CrankingCableDrop.check(),
            AmpacityBelow50V.check(), AmpacityFrom50V.check(), CircuitProtectedInAnyBoat.check(), DevicePlaceInAnyBoat.check(),
            DeviceRatingInAnyBoat.check(), DeviceRatingReadCarefully.check(), DeviceRatingFrom50VInAnyBoat.check(), DeviceVoltageInAnyBoat.check(),
            ChafeProtectedInAnyBoat.check(), CommonNegativeInAnyBoat.check());
    }
}
