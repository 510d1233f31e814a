// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import java.util.List;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Practice;
import garboard.practice.ac.AcChecks;
import garboard.practice.battery.BatteryChecks;
import garboard.practice.cable.CableChecks;
import garboard.practice.fuel.FuelChecks;
import garboard.practice.set.SetChecks;
import garboard.practice.ventilation.VentilationChecks;

/** US federal rules for boats with gasoline engines: 33 CFR 183 subparts I, J and K, and what 40 and 46 CFR add for them. */
public final class FederalGasolineCraft implements Practice {

    @Override
    public String id() {
        return "us-federal-gasoline";
    }

    @Override
    public String name() {
        return "US federal rules for gasoline craft (33 CFR 183 and what goes with it)";
    }

    @Override
    public String appliesTo() {
        return "Boats with a gasoline engine for power or propulsion, as law for their builders; elsewhere a check of this practice does not apply and says so.";
    }

    @Override
    public List<Check<?>> checks() {
        return Stream.of(BatteryChecks.federal(),
            CableChecks.federal(),
            FuelChecks.federal(),
            VentilationChecks.federal(),
            AcChecks.federal(),
            SetChecks.federal())
            .<Check<?>>flatMap(List::stream).toList();
    }
}
