// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.SteppingBack;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.physics.cable.OvercurrentDevice;
import garboard.quantity.Current;

/** Advice for engine spaces: at most 150 % of the permitted current after the factor for engine spaces. */
final class DeviceRatingReadCarefully {

    private DeviceRatingReadCarefully() {
    }

    static Check<CableRun> check() {
        return DeviceRating.below50V("CABLE-DEVICE-RATING")
            .title("Fuse or breaker suits its conductor in the heat of an engine space (below 50 V)")
            .basis(Basis.derived("150 % of Table 5 after note 1: the careful reading of 33 CFR 183.455(c)(1)")
                .othersSay("the literal reading leaves note 1 out; ISO 13297: never above the permitted current"))
            .gravity(Gravity.ADVICE)
            .limit("in an engine space at most 150 % of 33 CFR 183.425 Table 5 times note 1")
            .applies(inEngineSpace())
            .applies(SteppingBack.where(DeviceRatingInAnyBoat.check()))
            .applies(SteppingBack.where(DeviceRatingByLaw.check()))
            .holds(s -> DeviceRating.compare(s.subject(), s.subject().getProtectionRating(), limit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", s -> DeviceRating.smaller(s, limit(s.subject())))
            .build();
    }

    /** Elsewhere note 1 changes nothing, and the literal reading tells the same. */
    private static Condition<CableRun> inEngineSpace() {
        return Condition.<CableRun>when("conductors in an engine space").known(path(CABLE_RUN__IN_ENGINE_SPACE))
            .test(s -> s.subject().getInEngineSpace() == Answer.YES, "no part of the conductor lies in an engine space");
    }

    private static Optional<Limit<Current>> limit(CableRun run) {
        return Table5.conductor(run, CableRuns.size(run)).map(OvercurrentDevice::limitBelow50VConservative)
            .map(most -> Limit.of(most, "150 % of: " + Table5.originBelow50V(run)));
    }
}
