// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MUFFLER__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Muffler;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.OffCentre;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** Under sail the lift muffler stands near the centreline: off it, heel lifts it above the engine on one tack. */
final class ExhaustMufflerNearCentreline {

    private ExhaustMufflerNearCentreline() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-NEAR-CENTRELINE", Muffler.class)
            .title("Lift muffler of a sailing yacht stands near the centreline")
            .why("Far to one side, the muffler comes up to the height of the elbow on the tack that lifts it, and drains into the engine.")
            .basis(Basis.commonPractice().othersSay("named without a distance; a tenth of the beam is taken over from the siphon break"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most a tenth of the beam off the centreline")
            .applies(ExhaustConditions.liftMuffler())
            .applies(Conditions.sailing())
            .needs(path(MUFFLER__POSITION, POINT__Y), path(VESSEL__BEAM))
            .holds(s -> Comparison.atMost("the muffler stands " + OffCentre.inWords(s.subject().getPosition()),
                OffCentre.distance(s.subject().getPosition()), limit(s)))
            .remedy("Move the muffler to the centreline", ExhaustMufflerNearCentreline::move)
            .build();
    }

    private static Limit<Length> limit(Situation<Muffler> s) {
        return Limit.of(OffCentre.tenthOfBeam(s.vessel()), "common practice: a tenth of the beam, as for the siphon break");
    }

    private static Optional<Remedy> move(Situation<Muffler> s) {
        Length allowed = Rounding.down(limit(s).value(), 10, "mm");
        return Optional.of(Remedy.of("Move the muffler to within " + Figures.both(allowed) + " of the centreline")
            .setting(s.subject().getPosition(), POINT__Y, OffCentre.onTheSameSide(s.subject().getPosition(), allowed)));
    }
}
