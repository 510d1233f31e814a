// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** How far from the source of its current a fuse or breaker may sit: what lies between the two is protected by nothing. */
final class DevicePlace {

    static final Length BARE = Length.of(7, "in");
    static final Length SHEATHED = Length.of(40, "in");
    static final Length AT_BATTERY = Length.of(72, "in");

    private DevicePlace() {
    }

    /** Everything but limit and authority. The output cable's device is described with the switchboard. */
    static Check.Builder<CableRun> check(String id) {
        return Check.check(id, CableRun.class)
            .among(run -> !CableRuns.isOutputCable(run))
            .why("Between the source and its fuse a conductor is protected by nothing; a short there feeds a fire until the battery is flat.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .applies(CableConditions.workingCircuit())
            .applies(CableConditions.deviceFitted())
            .needs(CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE);
    }

    /** Whether it takes a sheath to allow the distance. */
    static boolean beyondBare(Situation<CableRun> s) {
        return s.subject().getProtectionDistanceFromSource().isMoreThan(BARE);
    }

    static boolean isSheathed(CableRun run) {
        return run.getSheathedToProtection() == Answer.YES;
    }

    static Comparison compare(Situation<CableRun> s, Limit<Length> limit) {
        Length distance = s.subject().getProtectionDistanceFromSource();
        return Comparison.atMost("the device sits " + Figures.both(distance) + " from the source", distance, limit);
    }

    static Optional<Remedy> closer(Situation<CableRun> s, Limit<Length> limit) {
        Length near = Rounding.down(limit.value(), 10, "mm");
        return Optional.of(Remedy.of("Move the device to within " + Figures.both(limit.value()) + " of the source, or sheathe "
            + "the conductor between the two")
            .setting(s.subject(), CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE, near));
    }
}
