// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import java.util.List;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Practice;
import garboard.practice.ac.AcChecks;
import garboard.practice.alarms.AlarmsChecks;
import garboard.practice.battery.BatteryChecks;
import garboard.practice.cable.CableChecks;
import garboard.practice.exhaust.ExhaustChecks;
import garboard.practice.fuel.FuelChecks;
import garboard.practice.mounting.MountingChecks;
import garboard.practice.rawwater.RawWaterChecks;
import garboard.practice.ventilation.VentilationChecks;

/** US rules for small passenger vessels: 46 CFR subchapter T. */
public final class SmallPassengerVessels implements Practice {

    @Override
    public String id() {
        return "us-small-passenger";
    }

    @Override
    public String name() {
        return "US small passenger vessels (46 CFR subchapter T)";
    }

    @Override
    public String appliesTo() {
        return "Small passenger vessels under 46 CFR 175.110, as law; elsewhere a check of this practice does not apply and says so.";
    }

    @Override
    public List<Check<?>> checks() {
        return Stream.of(BatteryChecks.smallPassenger(),
            CableChecks.smallPassenger(),
            FuelChecks.smallPassenger(),
            RawWaterChecks.smallPassenger(),
            ExhaustChecks.smallPassenger(),
            VentilationChecks.smallPassenger(),
            AcChecks.smallPassenger(),
            AlarmsChecks.smallPassenger(),
            MountingChecks.smallPassenger())
            .<Check<?>>flatMap(List::stream).toList();
    }
}
