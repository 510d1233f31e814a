// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LOADS;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__PHASE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.ElectricalLoad;
import garboard.model.PhaseSystem;
import garboard.practice.Figures;
import garboard.quantity.ApparentPower;

/** Apparent power on each phase or leg, by the load list. */
final class PhaseDemand {

    private PhaseDemand() {
    }

    /** Everything that the checks of phases have in common. */
    static Check.Builder<AcOutput> check(String id) {
        return LoadList.apparentNeeded(Check.check(id, AcOutput.class))
            .applies(severalPhases())
            .uses(path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__PHASE))
            .needs(GENERATOR_SET__PHASES);
    }

    static Condition<EObject> severalPhases() {
        return Condition.when("three-phase and split-phase sets").known(path(GENERATOR_SET__PHASES))
            .test(s -> Phases.count(s.set().getPhases()) > 1, "the set has a single phase");
    }

    /** The loads of a condition on each phase. */
    static List<ApparentPower> on(LoadList.Running running, PhaseSystem set) {
        return IntStream.range(0, Phases.count(set)).mapToObj(phase -> onPhase(running, set, phase)).toList();
    }

    private static ApparentPower onPhase(LoadList.Running running, PhaseSystem set, int phase) {
        double active = running.loads().stream().mapToDouble(load -> share(load, set, phase) * LoadList.connected(load).demand().si()).sum();
        double reactive = running.loads().stream().mapToDouble(load -> share(load, set, phase) * LoadList.connected(load).reactiveDemand().si()).sum();
        return ApparentPower.of(Math.hypot(active, reactive));
    }

    private static double share(ElectricalLoad load, PhaseSystem set, int phase) {
        return Phases.of(load, set).shareOn(phase);
    }

    static ApparentPower heaviest(List<ApparentPower> phases) {
        return phases.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    static ApparentPower lightest(List<ApparentPower> phases) {
        return phases.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** The condition whose heaviest phase carries the most. */
    static LoadList.Running worst(AcOutput output, PhaseSystem set) {
        return LoadList.conditions(output).stream().max(Comparator.comparing(running -> heaviest(on(running, set)))).orElseThrow();
    }

    /** What a phase of the set gives. */
    static ApparentPower limit(Situation<?> s) {
        return ApparentPower.of(FullLoad.apparent(s).si() / Phases.count(s.set().getPhases()));
    }

    static String inWords(LoadList.Running running, PhaseSystem set) {
        return running.inWords() + "the phases carry " + on(running, set).stream().map(Figures::metric).collect(Collectors.joining(", "));
    }
}
