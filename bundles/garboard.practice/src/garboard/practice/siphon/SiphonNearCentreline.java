// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.OffCentre;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** Under sail the siphon break sits near the centreline: off it, every degree of heel takes height away on one tack. */
final class SiphonNearCentreline {

    private SiphonNearCentreline() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-NEAR-CENTRELINE", SiphonBreak.class)
            .title("Siphon break of a sailing yacht sits near the centreline")
            .why("One metre off the centreline costs half a metre of height at 30 degrees of heel.")
            .basis(Sources.GERR_CH_7.othersSay("the centreline is named without a distance; a tenth of the beam is common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most a tenth of the beam off the centreline")
            .applies(SiphonConditions.breakFitted())
            .applies(Conditions.sailing())
            .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Y), path(VESSEL__BEAM))
            .holds(s -> Comparison.atMost("the vent seat sits " + OffCentre.inWords(s.subject().getVentSeat()),
                OffCentre.distance(s.subject().getVentSeat()), limit(s)))
            .remedy("Move the loop to the centreline, or raise it by as much as the heel takes away", SiphonNearCentreline::move)
            .build();
    }

    private static Limit<Length> limit(Situation<SiphonBreak> s) {
        return Limit.of(OffCentre.tenthOfBeam(s.vessel()), "common practice: a tenth of the beam");
    }

    private static Optional<Remedy> move(Situation<SiphonBreak> s) {
        Length allowed = Rounding.down(limit(s).value(), 10, "mm");
        return Optional.of(Remedy.of("Move the loop to within " + Figures.both(allowed)
            + " of the centreline, or raise it by as much as the heel takes away")
            .setting(s.subject().getVentSeat(), POINT__Y, OffCentre.onTheSameSide(s.subject().getVentSeat(), allowed)));
    }
}
