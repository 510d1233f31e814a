// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__KIND;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.VESSEL__SPEED;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__POSITION;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.WaterPump;
import garboard.physics.pipe.Hydrostatics;
import garboard.physics.pipe.SeaWater;
import garboard.physics.rawwater.RamHead;
import garboard.practice.Figures;
import garboard.quantity.Display;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

/** The ram of a forward scoop does not press on the pump's seal more than it bears. */
final class InletPressureAtPump {

    private static final GaugePressure LIMIT = GaugePressure.of(5, "psi");

    private InletPressureAtPump() {
    }

    static Check<WaterPump> check() {
        return Check.check("RAWWATER-RAM-PRESSURE", WaterPump.class)
            .title("Scoop does not press on the pump's seal")
            .why("The seal of a pump is made for suction; ram pressure runs past it into the drive.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 34.5 kPa (5 psi) at the pump's inlet at full speed, or the maker's greatest inlet pressure")
            .applies(RawWaterConditions.scoopFacesForward())
            .needs(path(VESSEL__SPEED), path(WATER_PUMP__POSITION, POINT__Z))
            .uses(path(HULL_PICK_UP__KIND), path(MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE))
            .holds(s -> Comparison.atMost("at " + Display.formatIn(s.vessel().getSpeed(), "kn") + " the scoop presses with "
                + Figures.both(pressure(s)) + " at the pump", pressure(s), Limit.makerOr(
                    s.maker(MakerLimits::getMaximumRawWaterInletPressure), LIMIT, "common practice")))
            .remedy("Replace the scoop by a flush or round strainer", s -> Optional.of(Remedy.of(
                "Replace the scoop by a flush or round strainer, which takes the ram of "
                    + Figures.both(RamHead.pressureAt(s.vessel().getSpeed(), SeaWater.CUSTOMARY_DENSITY)) + " away")))
            .build();
    }

    /** Ram and depth of the pump below the surface together; a pump above the surface is relieved by its height. */
    private static GaugePressure pressure(Situation<WaterPump> s) {
        Length head = Length.of(RamHead.at(s.vessel().getSpeed()).si() - s.subject().getPosition().getZ().si());
        return GaugePressure.of(Hydrostatics.pressure(SeaWater.CUSTOMARY_DENSITY, head).si());
    }
}
