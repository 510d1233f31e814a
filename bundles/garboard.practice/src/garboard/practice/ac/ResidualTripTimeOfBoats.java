// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_TRIP_TIME;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.physics.ac.ResidualCurrentDevice;
import garboard.practice.Sources;

/** The shorter break time that boat rules ask for; one beyond the standard of the device is told there. */
final class ResidualTripTimeOfBoats {

    private ResidualTripTimeOfBoats() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-RCD-TIME-BOAT", AcOutput.class)
            .title("Residual-current device trips as fast as boat rules ask")
            .why("Wet skin lets more current through, so boat rules leave less time than those ashore.")
            .basis(Sources.ISO_13297_FROM_MEMORY.othersSay("IEC 61008: 300 ms"))
            .gravity(Gravity.DEFECT)
            .limit("at most 100 ms at its rated residual current")
            .applies(AcConditions.residualDeviceFitted())
            .applies(inTime())
            .needs(AC_OUTPUT__RESIDUAL_TRIP_TIME)
            .holds(s -> ResidualTripTime.compare(s.subject(), Limit.of(ResidualCurrentDevice.BOAT_LIMIT, "ISO 13297, from memory")))
            .remedy("Replace the device by a faster one")
            .build();
    }

    private static Condition<AcOutput> inTime() {
        return Condition.<AcOutput>when("devices that trip within the time of their own standard").known(path(AC_OUTPUT__RESIDUAL_TRIP_TIME))
            .test(s -> !s.subject().getResidualTripTime().isMoreThan(ResidualTripTime.longest()), "the device is beyond its own standard already");
    }
}
