// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__GRATING_OPEN_AREA;
import static garboard.model.GarboardPackage.Literals.SEACOCK__BORE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.HullPickUp;
import garboard.physics.rawwater.OpenArea;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** The grating outside has twice the area of the valve's bore. */
final class GratingArea {

    private GratingArea() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-GRATING-AREA", HullPickUp.class)
            .title("Grating outside is open enough")
            .why("Growth and paint close half of a grating in a season; the pump is then fed through the rest.")
            .basis(Sources.CLASS_RULES)
            .gravity(Gravity.DEFECT)
            .limit("open area at least 2 times the area of the valve's bore")
            .applies(RawWaterConditions.outsideStrainerFitted())
            .needs(HULL_PICK_UP__GRATING_OPEN_AREA, SEACOCK__BORE)
            .holds(s -> Comparison.atLeast("the grating is open over " + Figures.in(s.subject().getGratingOpenArea(), "mm2", "in2"),
                s.subject().getGratingOpenArea(), Limit.of(least(s), "twice the area of the valve's bore")))
            .remedy("Fit a larger grating", s -> {
                Area wanted = Rounding.up(least(s), 10, "mm2");
                return Optional.of(Remedy.of("Fit a grating with at least " + Figures.in(wanted, "mm2", "in2") + " of open area")
                    .setting(s.subject(), HULL_PICK_UP__GRATING_OPEN_AREA, wanted));
            })
            .build();
    }

    private static Area least(Situation<HullPickUp> s) {
        return OpenArea.leastGrating(s.record().getRawWater().getSeacock().getBore());
    }
}
