// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_CREST__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.ExhaustCrest;
import garboard.model.Point;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The crest of the exhaust clears the water at the worst design attitude. */
final class ExhaustCrestHeightHeeled {

    private ExhaustCrestHeightHeeled() {
    }

    static Check<ExhaustCrest> check() {
        return Check.check("EXHAUST-CREST-HEIGHT-HEELED", ExhaustCrest.class)
            .title("Crest of the exhaust stands clear of the inclined waterline")
            .why("A crest far to one side comes down to the water on one tack; the sea then runs over it into the muffler.")
            .basis(Basis.commonPractice().othersSay("as for the siphon break, where 8 in at heel is Gerr's figure and 6 in at roll common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("inside bottom of the crest at least 200 mm (8 in) above the water at design heel under sail, 150 mm (6 in) at design roll for "
                + "motor craft")
            .applies(SteppingBack.where(ExhaustSubmergedOutletCrest.check()))
            .needs(Clearance.inputs(EXHAUST_CREST__INSIDE_BOTTOM))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getInsideBottom(), s.vessel());
                return Comparison.atLeast("the inside bottom of the crest lies " + clearance.inWords(), clearance.height(),
                    Limit.of(Clearance.customary(s.vessel()), "common practice"));
            })
            .remedy("Raise the crest or move it towards the centreline", ExhaustCrestHeightHeeled::raise)
            .build();
    }

    private static Optional<Remedy> raise(Situation<ExhaustCrest> s) {
        Point crest = s.subject().getInsideBottom();
        AttitudeEnvelope envelope = Clearance.envelope(s.vessel());
        Length margin = Clearance.customary(s.vessel());
        Length here = Clearance.heightToBuild(crest, envelope, margin);
        Length onCentreline = Clearance.heightToBuildOnCentreline(crest, envelope, margin);
        String alternative = onCentreline.isLessThan(here) ? "; on the centreline " + Figures.both(onCentreline) + " would do" : "";
        return Optional.of(Remedy.of("Raise the inside bottom of the crest to " + Figures.both(here) + " above the waterline where it is"
            + alternative).setting(crest, POINT__Z, here));
    }
}
