// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.PipeRun;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

/**
 * Whether a lift muffler holds the water that runs back into it when the set stops: (draining + residue) / usable.
 *
 * @param usable volume up to the lowest point of the inlet, at the heel one looks at; more than 0
 * @param draining what runs back, 0 or more
 * @param residueShare part of the usable volume that stays in the muffler while running, 0 to less than 1
 */
public record DrainBack(Volume usable, Volume draining, Ratio residueShare) {

    /** Fullest a muffler should get. Common practice. */
    public static final Ratio USUAL_LIMIT = Ratio.of(0.80);

    /** What is usually left in a muffler: 20 to 35 %. Common practice. */
    public static final Ratio USUAL_RESIDUE = Ratio.of(0.25);

    public DrainBack {
        Argument.positive("usable volume", usable);
        Argument.notNegative("draining volume", draining);
        Argument.between("residue", residueShare, 0, 0.999, "0 to less than 1");
    }

    /** A muffler into which nothing drains yet, with the usual residue. */
    public static DrainBack into(Volume usable) {
        return new DrainBack(usable, Volume.of(0), USUAL_RESIDUE);
    }

    public DrainBack from(Volume volume) {
        return new DrainBack(usable, volume, residueShare);
    }

    public DrainBack withResidue(Ratio share) {
        return new DrainBack(usable, draining, share);
    }

    /** Volume in all lengths that slope back to the muffler, as if they were full: pi/4 D^2 L. Derived here. */
    public static Volume of(List<PipeRun> slopingBack) {
        return Volume.of(slopingBack.stream().mapToDouble(run -> Bore.content(run).si()).sum());
    }

    /** How full the muffler gets; more than 1 runs over into the engine. */
    public Ratio filling() {
        return Ratio.of(draining.si() / usable.si() + residueShare.si());
    }

    /** Space left under the inlet after the set has stopped; negative where it ran over. */
    public Volume freeAfterStop() {
        return Volume.of(usable.si() * (1 - residueShare.si()) - draining.si());
    }

    /** Least usable volume for a greatest filling. @param limit more than the residue, to 1 */
    public Volume leastUsable(Ratio limit) {
        return Volume.of(draining.si() / (limit(limit) - residueShare.si()));
    }

    /** Most that may run back for a greatest filling. @param limit more than the residue, to 1 */
    public Volume greatestDraining(Ratio limit) {
        return Volume.of(usable.si() * (limit(limit) - residueShare.si()));
    }

    /** The stricter rule: three times what runs back. Common practice. */
    public static Volume leastUsableByThreeTimesRule(Volume draining) {
        return Volume.of(3 * Argument.notNegative("draining volume", draining));
    }

    private double limit(Ratio limit) {
        Argument.positive("limit less residue", Ratio.of(limit.si() - residueShare.si()));
        return Argument.between("limit", limit, 0, 1, "more than the residue, to 1");
    }
}
