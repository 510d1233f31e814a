// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_TRIP_CURRENT;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** The device trips at 30 mA or less. */
final class ResidualTripCurrent {

    private static final Current MOST = Current.of(30, "mA");

    private ResidualTripCurrent() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-RCD-CURRENT", AcOutput.class)
            .title("Residual-current device trips at 30 mA")
            .why("More than 30 mA through a person stops the heart.")
            .basis(Sources.ISO_13297_FROM_MEMORY.othersSay("DGUV Information 203-032 asks for 30 mA for sockets up to 32 A (text read); "
                + "GFCI class A: 4 to 6 mA"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("trips at 30 mA or less")
            .applies(AcConditions.residualDeviceFitted())
            .needs(AC_OUTPUT__RESIDUAL_TRIP_CURRENT)
            .holds(s -> Comparison.atMost("it trips at " + Figures.both(s.subject().getResidualTripCurrent()), s.subject().getResidualTripCurrent(),
                Limit.of(MOST, "ISO 13297, from memory")))
            .remedy("Replace the device by one of 30 mA")
            .build();
    }
}
