// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import org.eclipse.emf.ecore.EAttribute;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.Mounting;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Angle;

/** The angle at which the set stands, with that of the boat on top, against the maker's limit. */
final class InstalledAngle {

    private InstalledAngle() {
    }

    /** Everything that the two directions have in common. */
    static Check.Builder<Mounting> check(String id) {
        return Check.check(id, Mounting.class)
            .why("Beyond the maker's angle the oil pump draws air, and the bearings run dry.")
            .basis(Basis.derived("the set's own angle and that of the boat add"))
            .gravity(Gravity.DANGER_TO_MACHINE);
    }

    /** The two together, to the worse side. */
    static Angle together(Angle installed, Angle boat) {
        Angle sum = Angle.of(Math.abs(installed.si()) + boat.si());
        return installed.accuracySi().isPresent() ? sum.withAccuracy(Angle.of(installed.accuracySi().getAsDouble())) : sum;
    }

    static Limit<Angle> makers(Angle limit) {
        return new Limit<>(limit, "maker's limit", true);
    }

    /**
     * A set nearer to level, where the boat leaves room for that.
     *
     * @param feature the installed angle, which keeps its side
     */
    static Remedy leveller(Mounting mounting, EAttribute feature, Angle room) {
        if (room.si() < 0) {
            return Remedy.of("The boat alone inclines beyond the limit: do not run the set at such angles, or fit one that stands them");
        }
        Angle most = Rounding.down(room, 0.5, "deg");
        Angle installed = (Angle) mounting.eGet(feature);
        return Remedy.of("Level the set to within " + Figures.both(most)).setting(mounting, feature,
            installed.si() < 0 ? Angle.of(-most.in("deg"), "deg") : most);
    }
}
