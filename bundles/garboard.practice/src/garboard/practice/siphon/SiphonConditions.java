// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__COOLING;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__KIND;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Cooling;
import garboard.model.GeneratorSet;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;

/** When checks of the siphon break apply. */
final class SiphonConditions {

    private static final Set<SiphonBreakKind> VENTED = Set.of(SiphonBreakKind.VALVED_VENTED_LOOP, SiphonBreakKind.BLEED_OVERBOARD);

    private SiphonConditions() {
    }

    /** Nothing lets air into the line: there is no loop, or one without a vent. */
    static Condition<EObject> noBreakFitted() {
        return Condition.when("where no siphon break is fitted").known(path(SIPHON_BREAK__KIND))
            .test(s -> !VENTED.contains(siphonBreak(s).getKind()), "a siphon break is fitted");
    }

    /** A loop that lets air in, by a valve or by a bleed. */
    static Condition<EObject> breakFitted() {
        return Condition.when("where a siphon break is fitted").known(path(SIPHON_BREAK__KIND))
            .test(s -> VENTED.contains(siphonBreak(s).getKind()), "no vented siphon break is fitted");
    }

    static Condition<EObject> loopFitted() {
        return Condition.when("where a loop is fitted").known(path(SIPHON_BREAK__KIND))
            .test(s -> siphonBreak(s).getKind() != SiphonBreakKind.NONE, "no loop is fitted");
    }

    /** Sets cooled directly or by a keel cooler have no heat exchanger in the raw-water line. Where the cooling is not entered there may be one. */
    static Condition<EObject> heatExchangerFitted() {
        return Condition.when("sets with a heat exchanger").known().uses(path(GENERATOR_SET__COOLING)).test(s -> {
            Cooling cooling = s.optional(s.record().getGeneratorSet(), GeneratorSet::getCooling).orElse(Cooling.NOT_ENTERED);
            return cooling == Cooling.HEAT_EXCHANGER || cooling == Cooling.NOT_ENTERED;
        }, "the set has no heat exchanger in its raw-water line");
    }

    static Condition<EObject> valved() {
        return Condition.when("siphon breaks with a valve").known(path(SIPHON_BREAK__KIND))
            .test(s -> siphonBreak(s).getKind() == SiphonBreakKind.VALVED_VENTED_LOOP, "the siphon break has no valve");
    }

    static Condition<EObject> bleed() {
        return Condition.when("siphon breaks that bleed overboard").known(path(SIPHON_BREAK__KIND))
            .test(s -> siphonBreak(s).getKind() == SiphonBreakKind.BLEED_OVERBOARD, "the siphon break does not bleed overboard");
    }

    static Condition<EObject> ventHoseFitted() {
        return Condition.when("vents with a hose").known(path(SIPHON_BREAK__VENT_HOSE))
            .test(s -> siphonBreak(s).getVentHose() != VentHoseEnd.NO_VENT_HOSE, "the vent has no hose");
    }

    static Condition<EObject> ventedOverboard() {
        return Condition.when("vents led overboard").known(path(SIPHON_BREAK__VENT_HOSE))
            .test(s -> siphonBreak(s).getVentHose() == VentHoseEnd.OVERBOARD, "the vent is not led overboard");
    }

    private static SiphonBreak siphonBreak(Situation<?> situation) {
        return situation.record().getRawWater().getSiphonBreak();
    }
}
