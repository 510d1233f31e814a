// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.cable.ConductorSize;
import garboard.physics.cable.GroundingConductor;
import garboard.practice.Sources;
import garboard.practice.cable.CableRuns;

/** The conductor that joins neutral and ground is large enough for a fault behind the generator cable. */
final class NeutralGroundConductor {

    private NeutralGroundConductor() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NEUTRAL-GROUND-SIZE", AcOutput.class)
            .title("Conductor from neutral to ground is large enough")
            .why("In a fault it carries what the set can give; one that burns through leaves every metal part live.")
            .basis(Sources.yardstick("46 CFR Table 111.05-31(b)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("by generator cable: 8 AWG up to 2 AWG (33.6 mm2), 6 AWG up to 1/0, 4 AWG up to 3/0, larger above")
            .applies(AcConditions.grounded())
            .needs(AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE)
            .needs(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__CONDUCTOR_SIZE))
            .holds(NeutralGroundConductor::compare)
            .remedy("Lay a larger conductor", s -> least(s).flatMap(size -> Conductors.next(s.subject().getNeutralGroundConductorSize(), size.area()))
                .map(size -> Remedy.of("Join neutral and ground by a conductor of " + size)
                    .setting(s.subject(), AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE, size.toString())))
            .build();
    }

    private static Comparison compare(Situation<AcOutput> s) {
        return least(s).map(size -> Conductors.atLeast("the conductor from neutral to ground", s.subject().getNeutralGroundConductorSize(),
            new Conductors.Least(size, "46 CFR Table 111.05-31(b), for a generator cable of " + s.subject().getOutputCable().getConductorSize())))
            .orElseGet(() -> Comparison.undecided("the size of the output cable cannot be read; write it as 6 AWG or 16 mm2"));
    }

    private static Optional<ConductorSize> least(Situation<AcOutput> s) {
        return CableRuns.size(s.subject().getOutputCable().getConductorSize()).map(GroundingConductor::acNeutral);
    }
}
