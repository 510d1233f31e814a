// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import java.util.List;

import garboard.checks.Check;

/** The checks of the fuel supply by the authority behind them, each list in the order of a walk from the tank to the set. */
public final class FuelChecks {

    private FuelChecks() {
    }

    /** 33 CFR 183 subpart J. */
    public static List<Check<?>> federal() {
        return List.of(TankLabelledByLaw.check(), TankTestPressureByLaw.check(), TankOpeningsAtTopByLaw.check(), TankMovementByLaw.check(),
            VentFlameArresterByLaw.check(), GroundResistanceByLaw.check(), FillHoseClampsByLaw.check(), AntiSiphonByLaw.check(),
            HoseClassByPosition.check(), FilterStandsFireByLaw.check(), PumpCloseToEngineByLaw.check(), PumpStopsWithEngineByLaw.check(),
            FlexibleLinkByLaw.check(), LeakTestByLaw.check());
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(VentBoreOfPassengerVessel.check(), ShutOffsOfPassengerVessel.check(), BackfireArresterOfPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen. */
    public static List<Check<?>> standards() {
        return List.of(FilterStandsFire.check(), HoseBearsPressure.check());
    }

    /** Handbooks, trade press, common practice and physics. */
    public static List<Check<?>> handbook() {
        return List.of(Endurance.check(), OwnPickUp.check(), PickUpClearance.check(), NoScreenInTank.check(), AntiSiphonForDiesel.check(),
            AntiSiphonValveHolds.check(), HoseOfTheBestClass.check(), HoseEnds.check(), LineBore.check(), LineDrop.check(),
            SeparatorCarriesTheFlow.check(), SeparatorFineness.check(), EngineFilterFineness.check(), SeparatorBowl.check(),
            SeparatorNotHighest.check(), SeparatorClearance.check(), SeparatorFixed.check(), FuelLift.check(), SuctionForecast.check(),
            CleanVacuum.check(), VacuumNow.check(), VacuumRise.check(), FeedPressure.check(), RailPressure.check(),
            FlexibleLastLink.check(), RigidLineSupport.check(), ReturnToTankInUse.check(), ReturnCannotDeadHead.check(),
            LeakTestForDiesel.check());
    }
}
