// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED;
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
import garboard.model.MakerLimits;
import garboard.model.Point;
import garboard.model.SiphonBreak;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The vent seat of the siphon break clears the water at the worst design attitude: else the sea siphons through the stopped set. */
final class SiphonHeightHeeled {

    private SiphonHeightHeeled() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-HEIGHT-HEELED", SiphonBreak.class)
            .title("Siphon break stands clear of the inclined waterline")
            .why("On the wrong tack or at the end of a roll a vent that is high enough in harbour goes under, and the engine fills.")
            .basis(Sources.GERR_CH_7.othersSay("8 in is Gerr's figure at heel; for motor craft 6 in at roll is common practice; heel to test with: "
                + "7 deg for motor craft in ISO 9093 and ABYC H-27, 15 and 22.5 deg in the UK small commercial code"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("vent seat at least 200 mm (8 in) above the water at design heel under sail, 150 mm (6 in) at design roll for motor craft, "
                + "or the maker's clearance")
            .applies(SiphonConditions.breakFitted())
            .needs(Clearance.inputs(SIPHON_BREAK__VENT_SEAT))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE, MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED)
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getVentSeat(), s.vessel());
                return Comparison.atLeast("the vent seat lies " + clearance.inWords(), clearance.height(), limit(s));
            })
            .remedy("Raise the loop or move it towards the centreline", SiphonHeightHeeled::raise)
            .build();
    }

    private static Limit<Length> limit(Situation<SiphonBreak> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMinimumSiphonClearanceHeeled), Clearance.customary(s.vessel()),
            Clearance.origin(s.vessel()));
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        Point seat = s.subject().getVentSeat();
        AttitudeEnvelope envelope = Clearance.envelope(s.vessel());
        Length here = Clearance.heightToBuild(seat, envelope, limit(s).value());
        Length onCentreline = Clearance.heightToBuildOnCentreline(seat, envelope, limit(s).value());
        String alternative = onCentreline.isLessThan(here) ? "; on the centreline " + Figures.both(onCentreline) + " would do" : "";
        return Optional.of(Remedy.of("Raise the vent seat to " + Figures.both(here) + " above the waterline where it is" + alternative)
            .setting(seat, POINT__Z, here));
    }
}
