// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.quantity.Voltage;

/** When checks of the AC output apply. */
final class AcConditions {

    /** ISO 13297:2020 with amendment 1 of 2022, scope: single-phase alternating current of at most 250 V. */
    private static final Voltage ISO_13297_MOST = Voltage.of(250, "V");

    private AcConditions() {
    }

    /** Three phases are outside ISO 13297; a split-phase set is single-phase with a tap in the middle. */
    static Condition<EObject> scopeOfIso13297() {
        return Condition.when("single-phase and split-phase sets of at most 250 V, the scope of ISO 13297")
            .known(path(GENERATOR_SET__PHASES), path(GENERATOR_SET__RATED_VOLTAGE)).test(AcConditions::withinIso13297,
                "three-phase sets and more than 250 V are outside the scope of ISO 13297");
    }

    static boolean withinIso13297(Situation<?> s) {
        return s.set().getPhases() != PhaseSystem.THREE_PHASE && !s.set().getRatedVoltage().isMoreThan(ISO_13297_MOST);
    }

    static Condition<EObject> threePhase() {
        return Condition.when("three-phase sets").known(path(GENERATOR_SET__PHASES))
            .test(s -> s.set().getPhases() == PhaseSystem.THREE_PHASE, "the set does not have three phases");
    }

    static Condition<EObject> splitPhase() {
        return Condition.when("split-phase sets").known(path(GENERATOR_SET__PHASES))
            .test(s -> s.set().getPhases() == PhaseSystem.SPLIT_PHASE, "the set does not have two legs");
    }

    /** A vessel without a shore inlet says so by marking the question about its residual-current device as not applicable. */
    static Condition<EObject> shoreSupply() {
        return Condition.when("vessels with a shore inlet").known().uses(path(AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE)).test(
            s -> s.optional(s.record().getAcOutput(), AcOutput::getShoreInletResidualDevice).filter(Answer.NOT_APPLICABLE::equals).isEmpty(),
            "there is no shore inlet: the question about its residual-current device is marked as not applicable");
    }

    /** There is a main fuse or breaker to be judged. */
    static Condition<AcOutput> deviceFitted() {
        return Condition.<AcOutput>when("where a main fuse or circuit breaker is fitted").known(path(AC_OUTPUT__PROTECTION_DEVICE))
            .test(s -> s.subject().getProtectionDevice() != ProtectionKind.NONE, "no main fuse or circuit breaker is fitted");
    }

    /** There is a residual-current device to be judged. */
    static Condition<AcOutput> residualDeviceFitted() {
        return Condition.<AcOutput>when("where a residual-current device is fitted").known(path(AC_OUTPUT__RESIDUAL_CURRENT_DEVICE))
            .test(s -> s.subject().getResidualCurrentDevice() == Answer.YES, "no residual-current device is fitted");
    }

    /** No conductor of the system is joined to ground. */
    static Condition<AcOutput> ungrounded() {
        return Condition.<AcOutput>when("systems without a neutral-to-ground bond").known(path(AC_OUTPUT__NEUTRAL_BOND))
            .test(s -> s.subject().getNeutralBond() == NeutralBond.NONE, "the neutral is joined to ground");
    }

    /** A conductor of the system is joined to ground. */
    static Condition<AcOutput> grounded() {
        return Condition.<AcOutput>when("systems with a neutral-to-ground bond").known(path(AC_OUTPUT__NEUTRAL_BOND))
            .test(s -> s.subject().getNeutralBond() != NeutralBond.NONE, "the neutral is not joined to ground");
    }
}
