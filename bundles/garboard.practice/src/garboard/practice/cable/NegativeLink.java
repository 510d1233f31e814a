// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.MOUNTING__COMMON_NEGATIVE_LINK;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CABLES;

import java.util.Comparator;
import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.FeaturePath;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.StartingBattery;
import garboard.physics.cable.ConductorSize;

/** The conductor that joins the grounded cranking circuits of set and main engines: everything but authority. */
final class NegativeLink {

    private NegativeLink() {
    }

    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .why("When a ground cable fails, the starter of one engine draws its current through whatever else joins the "
                + "two: fuel pipes, gauge wiring.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a link as large as the largest cranking cable aboard; the record knows those of the set only")
            .applies(CrankingCircuit.readableSizes())
            .needsWhen(s -> run(s).isPresent(), links().then(CABLE_RUN__CONDUCTOR_SIZE))
            .needsWhen(s -> run(s).isEmpty(), path(MOUNTING__COMMON_NEGATIVE_LINK))
            .uses(path(STARTING_BATTERY__CABLES, CABLE_RUN__FUNCTION))
            .holds(NegativeLink::compare)
            .remedy("Join the engine negatives by a cable as large as the largest cranking cable", NegativeLink::remedy);
    }

    private static FeaturePath links() {
        return path(STARTING_BATTERY__CABLES).where(CableRun.class, NegativeLink::isLink);
    }

    private static boolean isLink(CableRun run) {
        return run.getFunction() == CableFunction.COMMON_NEGATIVE_LINK;
    }

    /** The link as a cable run; without one its size may stand with the mounting. */
    private static Optional<CableRun> run(Situation<StartingBattery> s) {
        return s.subject().getCables().stream().filter(NegativeLink::isLink).findFirst();
    }

    private static String entered(Situation<StartingBattery> s) {
        return run(s).map(CableRun::getConductorSize).orElseGet(() -> s.record().getMounting().getCommonNegativeLink());
    }

    private static ConductorSize largestCranking(Situation<StartingBattery> s) {
        return CrankingCircuit.sizes(s.subject()).max(Comparator.comparing(ConductorSize::area)).orElseThrow();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        ConductorSize needed = largestCranking(s);
        return CableRuns.size(entered(s)).map(link -> Comparison.atLeast("the link is " + link + ", the largest cranking cable "
            + "of the set " + needed,
            link.area(), Limit.of(needed.area(), "any one starting current")))
            .orElseGet(() -> Comparison.holds("\"" + entered(s) + "\" is not the conductor size of a link", false));
    }

    private static Optional<Remedy> remedy(Situation<StartingBattery> s) {
        String size = largestCranking(s).toString();
        Remedy remedy = Remedy.of("Join the engine negatives by a cable of " + size + ", or of the main engine's cranking cable "
            + "where that is larger");
        return Optional.of(run(s).map(link -> remedy.setting(link, CABLE_RUN__CONDUCTOR_SIZE, size))
            .orElseGet(() -> remedy.setting(s.record().getMounting(), MOUNTING__COMMON_NEGATIVE_LINK, size)));
    }
}
