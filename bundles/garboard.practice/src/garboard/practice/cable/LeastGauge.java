// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;

/** The thinnest conductor that a rule allows, alone and in a sheath. The sheath of the record is the one up to the overcurrent device. */
final class LeastGauge {

    private LeastGauge() {
    }

    /** The check of a rule that lets thinner conductors pass in a sheath: everything but authority. */
    static Check.Builder<CableRun> check(String id, Pair least) {
        return Check.check(id, CableRun.class)
            .why("A thin conductor breaks at the first lug or clip that moves, whatever current it could carry.")
            .applies(CableConditions.readableSize())
            .needsWhen(s -> isThin(s.subject(), least), path(CABLE_RUN__SHEATHED_TO_PROTECTION))
            .holds(s -> compare(s.subject(), least))
            .remedy("Lay a thicker conductor", s -> remedy(s.subject(), limit(s.subject(), least)));
    }

    /**
     * The thinnest conductor that a rule allows.
     *
     * @param size the conductor
     * @param rule whose figure it is
     */
    record Thinnest(ConductorSize size, String rule) {
    }

    /**
     * The two figures of a rule.
     *
     * @param alone for a conductor by itself
     * @param sheathed for one in a sheath with others
     */
    record Pair(Thinnest alone, Thinnest sheathed) {

        /** For a conductor by itself; named first, so that the two cannot be swapped unseen. */
        static Pair alone(ConductorSize size, String rule) {
            return new Pair(new Thinnest(size, rule), new Thinnest(size, rule));
        }

        /** The same rule with its figure for one in a sheath with others. */
        Pair inSheath(ConductorSize size) {
            return new Pair(alone, new Thinnest(size, alone.rule()));
        }
    }

    private static boolean isThin(CableRun run, Pair least) {
        return CableRuns.size(run).area().isLessThan(least.alone().size().area());
    }

    private static Thinnest limit(CableRun run, Pair least) {
        return isThin(run, least) && run.getSheathedToProtection() == Answer.YES ? least.sheathed() : least.alone();
    }

    private static Comparison compare(CableRun run, Pair least) {
        String place = !isThin(run, least) ? "" : run.getSheathedToProtection() == Answer.YES ? ", in a sheath" : ", without a sheath";
        return compare(run, limit(run, least), place);
    }

    static Comparison compare(CableRun run, Thinnest least, String place) {
        return Comparison.atLeast("the conductor is " + CableRuns.size(run) + place + "; the thinnest allowed is " + least.size(),
            CableRuns.size(run).area(), Limit.of(least.size().area(), least.rule()));
    }

    static Optional<Remedy> remedy(CableRun run, Thinnest least) {
        return ConductorSeries.smallest(CableRuns.series(CableRuns.size(run)), least.size().area()).map(size -> CableRuns.replace(run, size));
    }
}
