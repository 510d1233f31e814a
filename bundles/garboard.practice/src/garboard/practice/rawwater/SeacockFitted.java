// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__BORE;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SEACOCK__KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.HullPickUp;
import garboard.model.ValveKind;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.physics.rawwater.Flooding;
import garboard.physics.rawwater.SeacockZone;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** An intake that comes under water in any design attitude has a seacock. */
final class SeacockFitted {

    private SeacockFitted() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-SEACOCK-FITTED", HullPickUp.class)
            .title("Seacock on the intake")
            .why("Without a valve a split hose sinks the boat: nothing but the hull's opening limits the flow.")
            .basis(Sources.ISO_9093.othersSay("ABYC H-27, quoted, asks for the same; ISO 9093 heels motor craft 7 deg, sailing"
                + " yachts 30 deg"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a seacock on every opening below the heeled waterline")
            .applies(RawWaterConditions.unlessPassengerLawAsksForAValve())
            .needs(SEACOCK__KIND, VESSEL__HULL_KIND, VESSEL__DESIGN_TRIM)
            .needs(path(HULL_PICK_UP__POSITION, POINT__X), path(HULL_PICK_UP__POSITION, POINT__Y), path(HULL_PICK_UP__POSITION, POINT__Z))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(HULL_PICK_UP__BORE, VESSEL__SINKAGE)
            .holds(SeacockFitted::compare)
            .remedy("Fit a flanged seacock to the hull at the intake")
            .build();
    }

    private static Comparison compare(Situation<HullPickUp> s) {
        var point = DesignAttitude.point(s.subject().getPosition());
        var envelope = Clearance.envelope(s.vessel());
        HeightAt lowest = HeeledHeight.lowest(point, envelope);
        String where = "the intake is " + DesignAttitude.heightInWords(lowest.height()) + " at "
            + DesignAttitude.inWords(lowest.attitude());
        if (!SeacockZone.belowHeeledWaterline(point, envelope)) {
            return Comparison.holds(where + ", so it needs no seacock", true);
        }
        boolean fitted = s.record().getRawWater().getSeacock().getKind() != ValveKind.NONE;
        return Comparison.holds(where + (fitted ? " and has a valve" : " and has no valve" + flooding(s)), fitted);
    }

    private static String flooding(Situation<HullPickUp> s) {
        Length bore = s.subject().getBore();
        double depthM = -s.subject().getPosition().getZ().si();
        if (bore == null || depthM <= 0) {
            return "";
        }
        var hole = Flooding.Hole.ofBore(bore).under(Length.of(depthM));
        return "; through a failed hose " + Figures.both(Flooding.flow(hole, Flooding.SHORT_TUBE)) + " would come in at rest";
    }
}
