// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.cable.ConductorSize;
import garboard.physics.cable.GroundingConductor;
import garboard.practice.Figures;
import garboard.practice.cable.CableRuns;
import garboard.quantity.Area;

/** The protective conductor by the rating of the main device, NFPA 70 Table 250.122: everything but authority. */
final class ProtectiveSize {

    private ProtectiveSize() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("In a fault it has to carry the current until the device trips; one that burns through leaves the frame live.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("by the device: 14 AWG to 15 A, 12 AWG to 20 A, 10 AWG (5.3 mm2) to 60 A, 8 AWG (8.4 mm2) to 100 A, 6 AWG to 200 A; "
                + "larger in proportion where the live conductors are")
            .needs(AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE, AC_OUTPUT__PROTECTION_RATING)
            .holds(s -> Conductors.atLeast("the protective conductor", s.subject().getProtectiveConductorSize(), least(s)))
            .remedy("Lay a larger protective conductor", s -> larger(s, least(s).size()));
    }

    static boolean isLargeEnough(AcOutput output) {
        Area least = GroundingConductor.equipment(output.getProtectionRating()).area();
        return CableRuns.size(output.getProtectiveConductorSize()).filter(size -> size.area().si() >= least.si() * (1 - 1e-9)).isPresent();
    }

    private static Conductors.Least least(Situation<AcOutput> s) {
        return new Conductors.Least(GroundingConductor.equipment(s.subject().getProtectionRating()),
            "NFPA 70 Table 250.122, for a device of " + Figures.both(s.subject().getProtectionRating()));
    }

    static Optional<Remedy> larger(Situation<AcOutput> s, ConductorSize least) {
        return Conductors.next(s.subject().getProtectiveConductorSize(), least.area()).map(size -> Remedy.of("Lay a protective conductor of " + size)
            .setting(s.subject(), AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE, size.toString()));
    }
}
