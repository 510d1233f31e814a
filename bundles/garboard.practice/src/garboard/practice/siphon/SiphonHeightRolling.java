// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.SiphonBreak;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.practice.Clearance;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/** The vent seat of a motor craft stays out of the water in a sea, not only in a swell: a warning beyond the design roll. */
final class SiphonHeightRolling {

    /** 22.5 deg rolling and 7.5 deg dynamic trim. */
    private static final AttitudeEnvelope ROLLING = AttitudeEnvelope.toHeel(Angle.of(22.5, "deg")).toTrim(Angle.of(7.5, "deg"));

    private SiphonHeightRolling() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-HEIGHT-ROLLING", SiphonBreak.class)
            .title("Siphon break of a motor craft stays out of the water when she rolls hard")
            .why("A loop that passes at a harbour roll may go under in a beam sea, when nobody looks at the set.")
            .basis(Sources.UK_CODE_SECTION_7.othersSay("the code names the attitudes for machinery, not a height of the loop; 7 deg is used for hull "
                + "fittings of motor craft in ISO 9093 and ABYC H-27"))
            .gravity(Gravity.ADVICE)
            .limit("vent seat above the water at 22.5 deg roll and 7.5 deg trim")
            .applies(SiphonConditions.breakFitted())
            .applies(Conditions.motorCraft())
            .applies(SteppingBack.where(SiphonAboveWater.check()))
            .applies(SteppingBack.where(SiphonHeightHeeled.check()))
            .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__X), path(SIPHON_BREAK__VENT_SEAT, POINT__Y), path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getVentSeat(), ROLLING);
                return Comparison.moreThan("the vent seat lies " + clearance.inWords(), clearance.height(),
                    Limit.of(Length.of(0, "mm"), "the water itself"));
            })
            .remedy("Raise the loop or move it towards the centreline", SiphonHeightRolling::raise)
            .build();
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        Length justAbove = Length.of(1, "mm");
        Length enough = Clearance.heightToBuild(s.subject().getVentSeat(), ROLLING, justAbove);
        return Optional.of(Remedy.of("Raise the vent seat to " + Figures.both(enough) + " above the waterline, or move it towards the centreline")
            .setting(s.subject().getVentSeat(), POINT__Z, enough));
    }
}
