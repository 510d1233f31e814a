// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_CREST__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.EXHAUST_CREST__VENTED;
import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__PLACE;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.ExhaustCrest;
import garboard.model.ExhaustOutlet;
import garboard.model.OutletPlace;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/**
 * Where the outlet comes under water, the crest keeps the heights of a siphon break, or is vented like one. The other checks of the crest's
 * height step back where this one falls short.
 */
final class ExhaustSubmergedOutletCrest {

    /** As for a siphon break: trade press, 2017. */
    private static final Length UPRIGHT = Length.of(300, "mm");

    private ExhaustSubmergedOutletCrest() {
    }

    static Check<ExhaustCrest> check() {
        return Check.check("EXHAUST-SUBMERGED-OUTLET-CREST", ExhaustCrest.class)
            .title("Crest above an outlet under water breaks the siphon")
            .why("With its outlet under water a cooling exhaust sucks the sea back over the crest, and goes on as a siphon.")
            .basis(Basis.commonPractice().othersSay("the heights are those of a siphon break"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("vented, or 300 mm (12 in) above the loaded waterline and 200 mm (8 in, sail) or 150 mm (6 in, motor) above the inclined one")
            .needs(path(EXHAUST_OUTLET__PLACE))
            .needsWhen(s -> !madeForUnderWater(s), path(EXHAUST_OUTLET__INSIDE_BOTTOM, POINT__X), path(EXHAUST_OUTLET__INSIDE_BOTTOM, POINT__Y),
                path(EXHAUST_OUTLET__INSIDE_BOTTOM, POINT__Z))
            .needs(VESSEL__HULL_KIND, VESSEL__DESIGN_TRIM)
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .needsWhen(ExhaustSubmergedOutletCrest::comesUnderWater, path(EXHAUST_CREST__VENTED))
            .needsWhen(s -> comesUnderWater(s) && !vented(s), path(EXHAUST_CREST__INSIDE_BOTTOM, POINT__X),
                path(EXHAUST_CREST__INSIDE_BOTTOM, POINT__Y), path(EXHAUST_CREST__INSIDE_BOTTOM, POINT__Z))
            .holds(ExhaustSubmergedOutletCrest::compare)
            .remedy("Raise the crest; a vent at its top breaks the siphon, but keeps no sea out", ExhaustSubmergedOutletCrest::raise)
            .build();
    }

    private static Comparison compare(Situation<ExhaustCrest> s) {
        if (!comesUnderWater(s)) {
            return Comparison.holds("the outlet stays above the water at every design attitude", true);
        }
        if (vented(s)) {
            return Comparison.holds("the outlet comes under water and the crest is vented", true);
        }
        Length height = s.subject().getInsideBottom().getZ();
        if (height.isLessThan(UPRIGHT)) {
            return Comparison.atLeast("the outlet comes under water and the crest lies " + DesignAttitude.heightInWords(height), height,
                Limit.of(UPRIGHT, "as for a siphon break"));
        }
        Clearance clearance = Clearance.atWorst(s.subject().getInsideBottom(), s.vessel());
        return Comparison.atLeast("the outlet comes under water and the crest lies " + clearance.inWords(), clearance.height(),
            Limit.of(Clearance.customary(s.vessel()), "as for a siphon break"));
    }

    private static boolean madeForUnderWater(Situation<ExhaustCrest> s) {
        OutletPlace place = outlet(s).getPlace();
        return place == OutletPlace.UNDERWATER || place == OutletPlace.BOTTOM;
    }

    private static boolean comesUnderWater(Situation<ExhaustCrest> s) {
        return madeForUnderWater(s) || Clearance.atWorst(outlet(s).getInsideBottom(), s.vessel()).height().si() < 0;
    }

    private static boolean vented(Situation<ExhaustCrest> s) {
        return s.subject().getVented() == Answer.YES;
    }

    private static ExhaustOutlet outlet(Situation<ExhaustCrest> s) {
        return s.record().getExhaust().getOutlet();
    }

    private static Optional<Remedy> raise(Situation<ExhaustCrest> s) {
        Length heeled = Clearance.heightToBuild(s.subject().getInsideBottom(), Clearance.envelope(s.vessel()),
            Clearance.customary(s.vessel()));
        Length enough = heeled.isLessThan(ExhaustCrestHeight.LEAST) ? ExhaustCrestHeight.LEAST : heeled;
        return Optional.of(Remedy.of("Raise the crest to " + Figures.both(enough) + " above the waterline; a vent at its top breaks the siphon, "
            + "but keeps no sea out")
            .setting(s.subject().getInsideBottom(), POINT__Z, enough));
    }
}
