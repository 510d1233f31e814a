// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_HEEL;
import static garboard.model.GarboardPackage.Literals.MOUNTING__INSTALLED_ANGLE_SIDE;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Mounting;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Angle;

/** Across the boat: a sailing yacht heels, a motor craft rolls. */
final class InstalledHeel {

    private InstalledHeel() {
    }

    static Check<Mounting> check() {
        return InstalledAngle.check("MOUNTING-HEEL")
            .title("Set stays within its maker's angle across the boat")
            .limit("installed angle and design heel (sailing yachts) or design roll (motor craft) together at most the maker's greatest heel")
            .needs(MOUNTING__INSTALLED_ANGLE_SIDE, VESSEL__HULL_KIND, MAKER_LIMITS__MAXIMUM_HEEL)
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .holds(s -> Comparison.atMost("the set stands at " + Figures.both(s.subject().getInstalledAngleSide()) + " across the boat, which "
                + (DesignAttitude.heels(s) ? "heels" : "rolls") + " by " + Figures.both(boat(s)),
                InstalledAngle.together(s.subject().getInstalledAngleSide(), boat(s)), InstalledAngle.makers(most(s))))
            .remedy("Level the set", s -> Optional.of(InstalledAngle.leveller(s.subject(), MOUNTING__INSTALLED_ANGLE_SIDE,
                Angle.of(most(s).si() - boat(s).si()))))
            .build();
    }

    private static Angle boat(Situation<Mounting> s) {
        return DesignAttitude.heels(s) ? s.vessel().getDesignHeel() : s.vessel().getDesignRoll();
    }

    private static Angle most(Situation<Mounting> s) {
        return s.maker(MakerLimits::getMaximumHeel).orElseThrow();
    }
}
