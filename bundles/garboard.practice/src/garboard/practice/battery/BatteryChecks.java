// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import java.util.List;

import garboard.checks.Check;

/** The checks of the starting battery by the authority behind them, each list in the order of a walk around the battery. */
public final class BatteryChecks {

    private BatteryChecks() {
    }

    /** 33 CFR 183.420. */
    public static List<Check<?>> federal() {
        return List.of(BatteryRestraintByLaw.check(), PositiveTerminalCoveredByLaw.check(), FuelPartsShieldedByLaw.check(),
            NotAboveOrBelowFuelByLaw.check(), HydrogenLeavesTheBoatByLaw.check(), BatteryTerminalsByLaw.check());
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(BatteryHighOnPassengerVessel.check(), BatterySecuredOnPassengerVessel.check(), BatteryTrayOnPassengerVessel.check(),
            BatteryTerminalsOnPassengerVessel.check(), BatteryVentilatedOnPassengerVessel.check(), ChargerAmmeterOnPassengerVessel.check(),
            LargeBatteryOnPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(BatteryRestraintByIso.check(), FuelPartsShieldedByIso.check(), HydrogenVents.check(), CrankingRatingComparable.check(),
            ChargerFollowsTemperature.check());
    }

    /** Handbooks, common practice and physics. */
    public static List<Check<?>> handbook() {
        return List.of(BankVoltageMatchesSet.check(), BlocksAlike.check(), StringUnmixed.check(), BatteryDedicated.check(),
            BatteryIsolator.check(), BatteryIsolatorReachable.check(), EmergencyCrossConnect.check(), BatteryHigh.check(),
            BatterySecured.check(), BatteryTerminals.check(), PositiveTerminalCovered.check(), BatteryRested.check(), BatteryFull.check(),
            BatteryCharged.check(), BatteryMayCrank.check(), BlocksAgree.check(), CellsAgree.check(), CellsCharged.check(),
            CrankingRatingEnough.check(), ColdStartAboveFreezing.check(), ColdStartInFrost.check(), ChargeForStarts.check(),
            ChargeForEmergencyStarts.check(), PostsWhileCranking.check(), CrankingKeepsContactsWhole.check(), ChargesWhileRunning.check(),
            NotOvercharged.check());
    }
}
