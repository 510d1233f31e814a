// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__KIND;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.VESSEL__SPEED;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.RawWaterCircuit;
import garboard.physics.rawwater.RamHead;
import garboard.practice.Figures;
import garboard.quantity.Display;
import garboard.quantity.Length;

/** The ram of a forward scoop at full speed does not lift water over the loop. */
final class RamBelowLoop {

    private RamBelowLoop() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-RAM-HEAD", RawWaterCircuit.class)
            .title("Scoop's ram stays below the loop")
            .why("Where the ram lifts water over the loop, a set at rest is filled through its exhaust while the boat runs.")
            .basis(Basis.derived("stagnation head of the speed, V2/2g, against the height of the loop"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("loop higher above the waterline than V2/2g: 0.49 m at 6 kn, 1.35 m at 10 kn, 5.4 m at 20 kn")
            .applies(RawWaterConditions.scoopFacesForward())
            .needs(path(VESSEL__SPEED), path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .uses(HULL_PICK_UP__KIND)
            .holds(s -> Comparison.moreThan("at " + Display.formatIn(s.vessel().getSpeed(), "kn") + " the scoop lifts water by "
                + Figures.both(ram(s)) + "; the loop is " + Figures.both(loop(s)) + " high", loop(s),
                Limit.of(ram(s), "ram head at the vessel's speed")))
            .remedy("Replace the scoop by a flush or round strainer", s -> Optional.of(Remedy.of(
                "Replace the scoop by a flush or round strainer; with the scoop, water is over the loop from "
                    + (loop(s).si() > 0 ? Display.formatIn(RamHead.speedFor(loop(s)), "kn") : "rest") + " on")))
            .build();
    }

    private static Length ram(Situation<RawWaterCircuit> s) {
        return RamHead.at(s.vessel().getSpeed());
    }

    private static Length loop(Situation<RawWaterCircuit> s) {
        return s.subject().getSiphonBreak().getVentSeat().getZ();
    }
}
