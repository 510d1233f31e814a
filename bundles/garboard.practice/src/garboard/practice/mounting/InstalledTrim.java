// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_TRIM;
import static garboard.model.GarboardPackage.Literals.MOUNTING__INSTALLED_ANGLE_FORE;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Mounting;
import garboard.practice.Figures;
import garboard.quantity.Angle;

/** Along the boat. */
final class InstalledTrim {

    private InstalledTrim() {
    }

    static Check<Mounting> check() {
        return InstalledAngle.check("MOUNTING-TRIM")
            .title("Set stays within its maker's angle along the boat")
            .limit("installed angle and design trim together at most the maker's greatest trim")
            .needs(MOUNTING__INSTALLED_ANGLE_FORE, VESSEL__DESIGN_TRIM, MAKER_LIMITS__MAXIMUM_TRIM)
            .holds(s -> Comparison.atMost("the set stands at " + Figures.both(s.subject().getInstalledAngleFore()) + " along the boat, which trims by "
                + Figures.both(s.vessel().getDesignTrim()), InstalledAngle.together(s.subject().getInstalledAngleFore(), s.vessel().getDesignTrim()),
                InstalledAngle.makers(most(s))))
            .remedy("Level the set", s -> Optional.of(InstalledAngle.leveller(s.subject(), MOUNTING__INSTALLED_ANGLE_FORE,
                Angle.of(most(s).si() - s.vessel().getDesignTrim().si()))))
            .build();
    }

    private static Angle most(Situation<Mounting> s) {
        return s.maker(MakerLimits::getMaximumTrim).orElseThrow();
    }
}
