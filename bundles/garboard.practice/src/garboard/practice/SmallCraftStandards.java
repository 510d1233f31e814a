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

/** Voluntary small-craft standards, as far as they were seen quoted. */
public final class SmallCraftStandards implements Practice {

    @Override
    public String id() {
        return "small-craft-standards";
    }

    @Override
    public String name() {
        return "Voluntary small-craft standards, as quoted";
    }

    @Override
    public String appliesTo() {
        return "All small craft, voluntarily. Only figures seen in extracts or quotations; whoever has the standard in hand enters its figure as a limit.";
    }

    @Override
    public List<Check<?>> checks() {
        return Stream.of(BatteryChecks.standards(),
            CableChecks.standards(),
            FuelChecks.standards(),
            RawWaterChecks.standards(),
            SiphonChecks.standards(),
            ExhaustChecks.standards(),
            VentilationChecks.standards(),
            AcChecks.standards(),
            AlarmsChecks.standards(),
            MountingChecks.standards(),
            SetChecks.standards())
            .<Check<?>>flatMap(List::stream).toList();
    }
}
