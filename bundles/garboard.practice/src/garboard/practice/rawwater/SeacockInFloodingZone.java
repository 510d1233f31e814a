// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SEACOCK__KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__WATERLINE_LENGTH;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.HullPickUp;
import garboard.model.ValveKind;
import garboard.physics.rawwater.SeacockZone;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The stricter measure: also an intake a little above the loaded waterline has a seacock. */
final class SeacockInFloodingZone {

    private SeacockInFloodingZone() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-SEACOCK-ZONE", HullPickUp.class)
            .title("Seacock on an intake low above the waterline too")
            .why("Load, waves and a leak bring openings under water that are dry at the dock.")
            .basis(Sources.GERR_CH_17.othersSay("ISO 9093 and ABYC H-27 go by the heeled waterline"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a valve on every opening up to 0.30 m (12 in) or a sixtieth of the waterline length above the waterline,"
                + " whichever is more")
            .applies(RawWaterConditions.unlessPassengerLawAsksForAValve())
            .needs(path(HULL_PICK_UP__POSITION, POINT__Z), path(VESSEL__WATERLINE_LENGTH), path(SEACOCK__KIND))
            .holds(SeacockInFloodingZone::compare)
            .remedy("Fit a seacock at the intake")
            .build();
    }

    private static Comparison compare(Situation<HullPickUp> s) {
        Length height = s.subject().getPosition().getZ();
        Length zone = SeacockZone.heightByGerr(s.vessel().getWaterlineLength());
        String where = "the intake is " + DesignAttitude.heightInWords(height) + ", the zone reaches to " + Figures.both(zone);
        if (height.isMoreThan(zone)) {
            return Comparison.holds(where + ": no valve is asked for", true);
        }
        boolean fitted = s.record().getRawWater().getSeacock().getKind() != ValveKind.NONE;
        return Comparison.holds(where + (fitted ? ": it has a valve" : ": it has no valve"), fitted);
    }
}
