// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The top of the siphon break stays above the surrounding water at every design attitude: the standard's bare minimum. */
final class SiphonAboveWater {

    private SiphonAboveWater() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-ABOVE-WATER", SiphonBreak.class)
            .title("Siphon break never goes under water")
            .why("Under water the vent lets in water in place of air, and the siphon it should break runs on.")
            .basis(Sources.ABYC_P_1.othersSay("the standard as quoted names no height; 150 to 450 mm are used as margins"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("vent seat above the water at every design attitude")
            .applies(SiphonConditions.breakFitted())
            .needs(Clearance.inputs(SIPHON_BREAK__VENT_SEAT))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getVentSeat(), s.vessel());
                return Comparison.moreThan("the vent seat lies " + clearance.inWords(), clearance.height(),
                    Limit.of(Length.of(0, "mm"), "the water itself"));
            })
            .remedy("Raise the loop or move it towards the centreline", SiphonAboveWater::raise)
            .build();
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        Length justAbove = Length.of(1, "mm");
        Length enough = Clearance.heightToBuild(s.subject().getVentSeat(), Clearance.envelope(s.vessel()), justAbove);
        return Optional.of(Remedy.of("Raise the vent seat to " + Figures.both(enough)
            + " above the waterline at the least, better by the margins of the handbooks").setting(s.subject().getVentSeat(), POINT__Z, enough));
    }
}
