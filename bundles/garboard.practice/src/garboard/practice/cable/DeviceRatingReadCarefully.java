// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.physics.cable.OvercurrentDevice;
import garboard.quantity.Current;

/** Advice everywhere: at most 150 % of the permitted current after the factor for engine spaces. */
final class DeviceRatingReadCarefully {

    private DeviceRatingReadCarefully() {
    }

    static Check<CableRun> check() {
        return DeviceRating.below50V("CABLE-DEVICE-RATING")
            .title("Fuse or breaker suits its conductor where it lies (below 50 V)")
            .basis(Basis.derived("150 % of Table 5 after note 1: the careful reading of 33 CFR 183.455(c)(1)")
                .othersSay("the literal reading leaves note 1 out; ISO 13297: never above the permitted current"))
            .gravity(Gravity.ADVICE)
            .limit("at most 150 % of 33 CFR 183.425 Table 5 times note 1 for engine spaces")
            .needs(CABLE_RUN__IN_ENGINE_SPACE)
            .holds(s -> DeviceRating.compare(s.subject(), s.subject().getProtectionRating(), limit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", s -> DeviceRating.smaller(s, limit(s.subject())))
            .build();
    }

    private static Optional<Limit<Current>> limit(CableRun run) {
        return Table5.conductor(run, CableRuns.size(run)).map(OvercurrentDevice::limitBelow50VConservative)
            .map(most -> Limit.of(most, "150 % of Table 5 after note 1"));
    }
}
