// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SEACOCK__CLOSE_TO_HULL;
import static garboard.model.GarboardPackage.Literals.SEACOCK__KIND;
import static garboard.model.GarboardPackage.Literals.SEACOCK__MATERIAL;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.FittingMaterial;
import garboard.model.HullPickUp;
import garboard.model.Seacock;
import garboard.model.ValveKind;
import garboard.physics.rawwater.SeacockZone;
import garboard.practice.Conditions;
import garboard.practice.DesignAttitude;
import garboard.practice.Sources;

/** 46 CFR 179.350: a hull opening below the line 150 mm above the deepest load waterline can be shut close to the hull. */
final class SeacockOfPassengerVessel {

    private SeacockOfPassengerVessel() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-SEACOCK-179-350", HullPickUp.class)
            .title("Intake can be shut close to the hull (small passenger vessels)")
            .why("A broken pipe below or near the waterline floods the vessel unless it can be stopped at the hull.")
            .basis(Sources.cfr46("179.350"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("below 150 mm (6 in) above the deepest load waterline: a positive valve close to the hull, not of cast iron;"
                + " engine exhausts are exempt")
            .applies(Conditions.smallPassengerVessel())
            .needs(path(HULL_PICK_UP__POSITION, POINT__Z))
            .needsWhen(SeacockOfPassengerVessel::inZone, path(SEACOCK__KIND))
            .needsWhen(s -> inZone(s) && fitted(s), path(SEACOCK__CLOSE_TO_HULL), path(SEACOCK__MATERIAL))
            .holds(SeacockOfPassengerVessel::compare)
            .remedy("Fit a positive valve of bronze or another ductile, corrosion-resistant metal directly at the hull")
            .build();
    }

    private static Comparison compare(Situation<HullPickUp> s) {
        String where = "the intake is " + DesignAttitude.heightInWords(s.subject().getPosition().getZ());
        if (!inZone(s)) {
            return Comparison.holds(where + ", which is not below the line", true);
        }
        if (!fitted(s)) {
            return Comparison.holds(where + " and has no valve", false);
        }
        if (seacock(s).getCloseToHull() != Answer.YES) {
            return Comparison.holds(where + " and its valve is not close to the hull", false);
        }
        boolean castIron = seacock(s).getMaterial() == FittingMaterial.CAST_IRON;
        return Comparison.holds(where + (castIron ? " and its valve is of cast iron" : " and has its valve close to the hull"), !castIron);
    }

    private static boolean inZone(Situation<HullPickUp> s) {
        return SeacockZone.below46Cfr179Line(s.subject().getPosition().getZ());
    }

    private static boolean fitted(Situation<HullPickUp> s) {
        return seacock(s).getKind() != ValveKind.NONE;
    }

    private static Seacock seacock(Situation<HullPickUp> s) {
        return s.record().getRawWater().getSeacock();
    }
}
