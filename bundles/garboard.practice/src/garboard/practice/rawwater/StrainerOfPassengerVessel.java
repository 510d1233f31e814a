// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__KIND;
import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__PORT_BORE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.HullPickUp;
import garboard.model.StrainerPickUp;
import garboard.model.WaterStrainer;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.420(a)(2): the raw-water intake has a strainer. */
final class StrainerOfPassengerVessel {

    private StrainerOfPassengerVessel() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-STRAINER-182-420", HullPickUp.class)
            .title("Raw-water intake has a strainer (small passenger vessels)")
            .why("Debris that gets past the intake stops the cooling of a set on which the vessel depends.")
            .basis(Sources.cfr46("182.420(a)(2)"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a strainer in the intake, outside at the hull or inside in the line")
            .applies(Conditions.smallPassengerVessel())
            .applies(RawWaterConditions.cooledBySeaWater())
            .needs(HULL_PICK_UP__KIND)
            .uses(WATER_STRAINER__PORT_BORE)
            .holds(s -> {
                boolean outside = s.subject().getKind() != StrainerPickUp.NONE;
                return Comparison.holds(outside ? "the intake is covered by a strainer outside"
                    : inside(s) ? "a strainer is in the line inside" : "there is no strainer, neither outside nor in the line",
                    outside || inside(s));
            })
            .remedy("Fit a strainer just inboard of the seacock")
            .build();
    }

    /** A strainer of which nobody has entered so much as the bore of its ports is not there. */
    private static boolean inside(Situation<HullPickUp> s) {
        return s.optional(s.record().getRawWater().getStrainer(), WaterStrainer::getPortBore).isPresent();
    }
}
