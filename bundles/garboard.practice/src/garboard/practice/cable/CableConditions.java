// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SYSTEM_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.GeneratorSet;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.quantity.Length;
import garboard.quantity.Voltage;

/** When checks of cables apply. */
final class CableConditions {

    /** 33 CFR 183.425(g): a pigtail of less than 7 in of exposed length is left out. */
    private static final Length PIGTAIL = Length.of(7, "in");

    private static final Voltage ISO_13297_MOST = Voltage.of(250, "V");

    private CableConditions() {
    }

    /** The conductor size can be read; one check of its own tells where it cannot. */
    static Condition<CableRun> readableSize() {
        return Condition.<CableRun>when("where the conductor size can be read").known(path(CABLE_RUN__CONDUCTOR_SIZE))
            .test(s -> CableRuns.hasReadableSize(s.subject()), "the conductor size cannot be read; write it as 2/0 AWG or 70 mm2");
    }

    /** Circuits that work all the time: neither the starter's nor a connection of grounds. */
    static Condition<CableRun> workingCircuit() {
        return Condition.<CableRun>when("circuits other than cranking, links between batteries and connections of grounds")
            .known(path(CABLE_RUN__FUNCTION)).test(s -> !CableRuns.isCranking(s.subject()) && !CableRuns.isGrounding(s.subject()),
                "a cranking conductor or a connection of grounds, which carries no lasting current");
    }

    /** Conductors of the starting circuit. */
    static Condition<CableRun> crankingCable() {
        return Condition.<CableRun>when("cranking cables").known(path(CABLE_RUN__FUNCTION))
            .test(s -> CableRuns.isCranking(s.subject()), "this is not a cranking cable");
    }

    /** Reads the length where it is entered. */
    static Condition<CableRun> longerThanPigtail() {
        return Condition.<CableRun>when("conductors other than pigtails shorter than 178 mm (7 in)").known()
            .test(s -> s.subject().getLength() == null || !s.subject().getLength().isLessThan(PIGTAIL),
                "a pigtail shorter than 178 mm (7 in), which 33 CFR 183.425(g) leaves out");
    }

    /** A fuse or breaker is there to be judged. */
    static Condition<CableRun> deviceFitted() {
        return Condition.<CableRun>when("where a fuse or circuit breaker is fitted").known(path(CABLE_RUN__PROTECTION))
            .test(s -> s.subject().getProtection() != ProtectionKind.NONE, "no fuse or circuit breaker is fitted");
    }

    /** Connected straight to a battery terminal. */
    static Condition<CableRun> fromBatteryTerminal() {
        return Condition.<CableRun>when("conductors from a battery terminal").known(path(CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL))
            .test(s -> s.subject().getConnectedToBatteryTerminal() == Answer.YES, "the conductor does not start at a battery terminal");
    }

    /** ISO 13297 and, within it, what was ISO 10133: direct current to 50 V, and single-phase alternating current to 250 V. */
    static Condition<CableRun> scopeOfIso13297() {
        return Condition.<CableRun>when("direct current, and the cables of single-phase sets of at most 250 V: the scope of ISO 13297").known()
            .uses(path(CABLE_RUN__SYSTEM_VOLTAGE), path(CABLE_RUN__FUNCTION), path(GENERATOR_SET__PHASES), path(GENERATOR_SET__RATED_VOLTAGE))
            .test(s -> CableRuns.below50V(s.subject()) || !beyondIso13297(s),
                "three-phase sets and more than 250 V are outside the scope of ISO 13297");
    }

    /** Alternating current, where the phases decide whether ISO 13297 speaks of it. */
    static boolean alternates(Situation<CableRun> s) {
        return !CableRuns.below50V(s.subject());
    }

    private static boolean beyondIso13297(Situation<? extends CableRun> s) {
        GeneratorSet set = s.record().getGeneratorSet();
        return set != null && (set.getPhases() == PhaseSystem.THREE_PHASE
            || set.getRatedVoltage() != null && set.getRatedVoltage().isMoreThan(ISO_13297_MOST));
    }

    /** Fed from a panel, a busbar or a charging source. */
    static Condition<CableRun> notFromBatteryTerminal() {
        return Condition.<CableRun>when("conductors that do not start at a battery terminal")
            .known(path(CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL)).test(
                s -> s.subject().getConnectedToBatteryTerminal() != Answer.YES, "the conductor starts at a battery terminal and "
                    + "is judged as such");
    }
}
