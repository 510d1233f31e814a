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
import garboard.practice.set.SetChecks;
import garboard.practice.siphon.SiphonChecks;
import garboard.practice.ventilation.VentilationChecks;

/** Handbooks, trade press and common practice: what a careful installer does anyway. */
public final class HandbookPractice implements Practice {

    @Override
    public String id() {
        return "handbook-practice";
    }

    @Override
    public String name() {
        return "Handbook and common practice";
    }

    @Override
    public String appliesTo() {
        return "All installations. Figures from handbooks, the trade press and common practice; the maker's own limit takes their place where it is entered.";
    }

    @Override
    public List<Check<?>> checks() {
        return Stream.of(BatteryChecks.handbook(),
            CableChecks.handbook(),
            FuelChecks.handbook(),
            RawWaterChecks.handbook(),
            SiphonChecks.handbook(),
            ExhaustChecks.handbook(),
            VentilationChecks.handbook(),
            AcChecks.handbook(),
            AlarmsChecks.handbook(),
            MountingChecks.handbook(),
            SetChecks.handbook())
            .<Check<?>>flatMap(List::stream).toList();
    }
}
