// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__LIGHT_SHIP_RISE;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.HullPickUp;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.physics.geometry.PlaceToBuild;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The intake stays under water at every design heel and trim. */
final class IntakeStaysWet {

    private static final Length COVER = Length.of(150, "mm");

    private IntakeStaysWet() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-INTAKE-WET", HullPickUp.class)
            .title("Intake stays under water at every heel and trim")
            .why("An intake that comes up sucks air: the pump loses its prime and the set runs hot until it comes down again.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 150 mm (6 in) of water over the intake at design heel or roll and trim, light ship")
            .needs(VESSEL__HULL_KIND, VESSEL__DESIGN_TRIM)
            .needs(path(HULL_PICK_UP__POSITION, POINT__X), path(HULL_PICK_UP__POSITION, POINT__Y), path(HULL_PICK_UP__POSITION, POINT__Z))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(HULL_PICK_UP__LIGHT_SHIP_RISE)
            .holds(s -> {
                HeightAt highest = HeeledHeight.highest(DesignAttitude.point(s.subject().getPosition()), envelope(s));
                return Comparison.atLeast("the intake is " + DesignAttitude.heightInWords(highest.height()) + " at "
                    + DesignAttitude.inWords(highest.attitude()), Length.of(-highest.height().si()), Limit.of(COVER, "common practice"));
            })
            .remedy("Move the intake deeper or towards the centreline; a sailing yacht may want a second one on the other side",
                IntakeStaysWet::deeper)
            .build();
    }

    private static Optional<Remedy> deeper(Situation<HullPickUp> s) {
        Length height = PlaceToBuild.greatestHeightToStayWet(DesignAttitude.point(s.subject().getPosition()), envelope(s), COVER);
        Length place = Rounding.down(height, 10, "mm");
        return Optional.of(Remedy.of("At its distance from the centreline the intake has to be "
            + Figures.both(Length.of(-place.si())) + " below the loaded waterline; nearer to the centreline less will do")
            .setting(s.subject().getPosition(), POINT__Z, place));
    }

    private static AttitudeEnvelope envelope(Situation<HullPickUp> s) {
        Length rise = s.subject().getLightShipRise();
        AttitudeEnvelope envelope = DesignAttitude.envelope(s.vessel());
        return rise == null ? envelope : envelope.withLift(rise);
    }
}
