// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_TRIP_TIME;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.physics.ac.ResidualCurrentDevice;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** The break time at the rated residual current, by the standard of the device. */
final class ResidualTripTime {

    private ResidualTripTime() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-RCD-TIME", AcOutput.class)
            .title("Residual-current device trips in time")
            .why("A device that dawdles leaves a person on the current until the heart flutters.")
            .basis(Sources.IEC_61008)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 300 ms at its rated residual current, without delay")
            .applies(AcConditions.residualDeviceFitted())
            .needs(AC_OUTPUT__RESIDUAL_TRIP_TIME)
            .holds(s -> compare(s.subject(), Limit.of(longest(), "IEC 61008 and IEC 61009, general type")))
            .remedy("Replace the device")
            .build();
    }

    static TimeSpan longest() {
        return ResidualCurrentDevice.GENERAL.longest(Ratio.of(1));
    }

    static Comparison compare(AcOutput output, Limit<TimeSpan> limit) {
        return Comparison.atMost("it trips after " + Figures.both(output.getResidualTripTime()), output.getResidualTripTime(), limit);
    }
}
