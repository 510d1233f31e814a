// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import java.util.List;

import garboard.checks.Check;

/** The checks of alarms and safety by the authority behind them, people first. */
public final class AlarmsChecks {

    private AlarmsChecks() {
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(VapourDetectorOnPassengerVessel.check(), VapourSensorLowOnPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(CarbonMonoxideInEverySpace.check(), CarbonMonoxideCount.check(), CarbonMonoxideMarked.check(), CarbonMonoxideInDate.check());
    }

    /** Trade press and common practice. */
    public static List<Check<?>> handbook() {
        return List.of(CarbonMonoxideAlwaysPowered.check(), VapourDetectorFitted.check(), VapourSensorLow.check(), OilPressureAlarm.check(),
            CoolantAlarm.check(), PeopleAlarmTested.check(), ShutdownTested.check(), AlarmInDate.check(), FireExtinguisherInReach.check(),
            FireFoughtFromOutside.check(), FireSystemStopsSet.check(), RemoteStop.check(), WarningLabels.check());
    }
}
