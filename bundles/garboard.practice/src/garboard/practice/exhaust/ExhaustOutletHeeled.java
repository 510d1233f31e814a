// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__INSIDE_BOTTOM;
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
import garboard.model.ExhaustOutlet;
import garboard.model.OutletPlace;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The outlet stays out of the water at the design attitudes; where it does not, the crest alone keeps the sea out. */
final class ExhaustOutletHeeled {

    private ExhaustOutletHeeled() {
    }

    static Check<ExhaustOutlet> check() {
        return Check.check("EXHAUST-OUTLET-HEELED", ExhaustOutlet.class)
            .title("Outlet stays out of the water when the boat inclines")
            .why("Under water the outlet adds to the back pressure, can siphon back over the crest, and takes the full push of each sea.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("inside bottom of the outlet not under water at any design attitude")
            .applies(ExhaustConditions.outletMeantToBeDry())
            .applies(SteppingBack.where(ExhaustOutletHeight.check()))
            .needs(Clearance.inputs(EXHAUST_OUTLET__INSIDE_BOTTOM))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getInsideBottom(), s.vessel());
                return Comparison.atLeast("the inside bottom of the outlet lies " + clearance.inWords(), clearance.height(),
                    Limit.of(Length.of(0, "mm"), "the water itself"));
            })
            .remedy("Move the outlet up, to the transom or closer to the centreline, or build crest and anti-surge for an outlet under water",
                ExhaustOutletHeeled::raise)
            .build();
    }

    private static Optional<Remedy> raise(Situation<ExhaustOutlet> s) {
        Length enough = Clearance.heightToBuild(s.subject().getInsideBottom(), Clearance.envelope(s.vessel()), Length.of(0));
        boolean offCentre = s.subject().getInsideBottom().getY().si() != 0;
        String elsewhere = s.subject().getPlace() != OutletPlace.TRANSOM ? " or to the transom" : offCentre ? " or closer to the centreline" : "";
        return Optional.of(Remedy.of("Move the outlet up to " + Figures.both(enough) + " above the waterline" + elsewhere + ", or build crest and "
            + "anti-surge for an outlet under water").setting(s.subject().getInsideBottom(), POINT__Z, enough));
    }
}
