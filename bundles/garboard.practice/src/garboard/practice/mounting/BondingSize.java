// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MOUNTING__BONDED_TO_COMMON_GROUND;
import static garboard.model.GarboardPackage.Literals.MOUNTING__BONDING_CONDUCTOR;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.Answer;
import garboard.model.Mounting;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Sources;
import garboard.practice.cable.CableRuns;

/** The bonding conductor is at least 8 AWG. */
final class BondingSize {

    private static final ConductorSize LEAST = ConductorSize.awg(8);

    private BondingSize() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-BOND-SIZE", Mounting.class)
            .title("Bonding conductor is large enough")
            .why("A thin bond burns off in the fault that it is there for, or breaks before.")
            .basis(Sources.ABYC_E_11_FROM_MEMORY.othersSay("46 CFR 111.05-31(a): as large as the largest supply conductor, at least 8 AWG"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 8 AWG (8.4 mm2)")
            .applies(Condition.<Mounting>when("where a bonding conductor is fitted").known().uses(path(MOUNTING__BONDED_TO_COMMON_GROUND))
                .test(s -> s.subject().getBondedToCommonGround() != Answer.NO, "the set is not bonded to the common ground"))
            .needs(MOUNTING__BONDING_CONDUCTOR)
            .holds(s -> CableRuns.size(s.subject().getBondingConductor())
                .map(size -> Comparison.atLeast("the bonding conductor is " + size, size.area(), Limit.of(LEAST.area(), "ABYC E-11, from memory: 8 AWG")))
                .orElseGet(() -> Comparison.undecided("\"" + s.subject().getBondingConductor() + "\" is no conductor size; write it as 8 AWG or 10 mm2")))
            .remedy("Lay a larger bonding conductor", s -> CableRuns.size(s.subject().getBondingConductor()).map(CableRuns::series)
                .flatMap(series -> ConductorSeries.smallest(series, LEAST.area())).map(size -> Remedy.of("Lay a bonding conductor of " + size)
                    .setting(s.subject(), MOUNTING__BONDING_CONDUCTOR, size.toString())))
            .build();
    }
}
