// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.practice.Sources;
import garboard.practice.cable.CableRuns;

/** ISO 13297, from memory: the protective conductor is as large as the live one. Metric cables, where that standard is used. */
final class ProtectiveSizeByIso {

    private ProtectiveSizeByIso() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-PROTECTIVE-SIZE-ISO", AcOutput.class)
            .title("Protective conductor of a metric cable is as large as the live one")
            .why("In a fault it carries the same current as the live conductor.")
            .basis(Sources.ISO_13297_FROM_MEMORY.othersSay("NFPA 70 Table 250.122 allows less: 10 AWG (5.3 mm2) to 60 A"))
            .gravity(Gravity.DEFECT)
            .limit("at least the size of the live conductor")
            .applies(AcConditions.scopeOfIso13297())
            .applies(metricCable())
            .applies(largeEnoughByNfpa())
            .needs(AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE)
            .holds(s -> Conductors.atLeast("the protective conductor", s.subject().getProtectiveConductorSize(), least(s)))
            .remedy("Lay a larger protective conductor", s -> ProtectiveSize.larger(s, least(s).size()))
            .build();
    }

    private static Condition<AcOutput> metricCable() {
        return Condition.<AcOutput>when("output cables of a metric size").known(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__CONDUCTOR_SIZE))
            .test(s -> CableRuns.isMetric(s.subject().getOutputCable()), "the output cable is not of a metric size");
    }

    /** One that is too small for the device is told there. */
    private static Condition<AcOutput> largeEnoughByNfpa() {
        return Condition.<AcOutput>when("protective conductors that are large enough for the main device")
            .known(path(AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE), path(AC_OUTPUT__PROTECTION_RATING))
            .test(s -> ProtectiveSize.isLargeEnough(s.subject()), "the protective conductor is too small for the main device already");
    }

    private static Conductors.Least least(Situation<AcOutput> s) {
        return new Conductors.Least(CableRuns.size(s.subject().getOutputCable()), "ISO 13297, from memory: size of the live conductor");
    }
}
