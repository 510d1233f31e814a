// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;
import garboard.model.SeaRun;
import garboard.model.Trial;
import garboard.model.Vessel;
import garboard.quantity.Angle;

/**
 * How far a sea run went towards what the vessel is designed for. What it did not reach it says nothing about.
 *
 * @param seen the largest angle seen either way
 * @param design the angle to design for
 */
public record SeaReach(Angle seen, Angle design) {

    public boolean reached() {
        return !seen.isLessThan(design);
    }

    /** {@return the heel or roll, where both are entered} */
    public static Optional<SeaReach> ofHeel(CommissioningRecord record) {
        Optional<SeaRun> run = run(record);
        Optional<Vessel> vessel = Optional.ofNullable(record.getVessel());
        return of(largest(run.map(SeaRun::getHeelPort), run.map(SeaRun::getHeelStarboard)),
            largest(vessel.map(Vessel::getDesignHeel), vessel.map(Vessel::getDesignRoll)));
    }

    public static Optional<SeaReach> ofTrim(CommissioningRecord record) {
        Optional<SeaRun> run = run(record);
        return of(largest(run.map(SeaRun::getTrimUp), run.map(SeaRun::getTrimDown)),
            Optional.ofNullable(record.getVessel()).map(Vessel::getDesignTrim));
    }

    private static Optional<SeaReach> of(Optional<Angle> seen, Optional<Angle> design) {
        return seen.flatMap(angle -> design.map(wanted -> new SeaReach(angle, wanted)));
    }

    private static Optional<SeaRun> run(CommissioningRecord record) {
        return Optional.ofNullable(record.getTrial()).map(Trial::getSeaRun);
    }

    private static Optional<Angle> largest(Optional<Angle> one, Optional<Angle> other) {
        return Stream.of(one, other).flatMap(Optional::stream).max((a, b) -> Double.compare(Math.abs(a.si()), Math.abs(b.si())));
    }
}
