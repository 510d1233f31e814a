// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__SERVICE;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.FuelKind;
import garboard.model.HullKind;
import garboard.model.Vessel;
import garboard.model.VesselService;

/** When checks apply: the conditions that several systems share. */
public final class Conditions {

    private Conditions() {
    }

    /** The set burns gasoline. */
    public static Condition<EObject> gasolineSet() {
        return Condition.when("gasoline sets").known(path(GENERATOR_SET__FUEL))
                .test(s -> s.set().getFuel() == FuelKind.GASOLINE, "the set burns diesel");
    }

    /** The set burns diesel. */
    public static Condition<EObject> dieselSet() {
        return Condition.when("diesel sets").known(path(GENERATOR_SET__FUEL))
                .test(s -> s.set().getFuel() == FuelKind.DIESEL, "the set burns gasoline");
    }

    /**
     * 33 CFR 183 looks at the boat, not at the set: any gasoline engine for power or propulsion brings it into force, outboards
     * excepted (33 CFR 183.401, .501, .601).
     */
    public static Condition<EObject> boatWithGasolineEngine() {
        return Condition.when("boats with a gasoline engine for power or propulsion (not outboards)")
                .known(path(VESSEL__GASOLINE_ENGINE_ABOARD)).test(s -> s.vessel().getGasolineEngineAboard() == Answer.YES,
                        "no gasoline engine is aboard, so 33 CFR 183 does not apply as law");
    }

    /** Boats on which 33 CFR 183 is a yardstick and no law. */
    public static Condition<EObject> boatWithoutGasolineEngine() {
        return Condition.when("boats without a gasoline engine, outboards left out of account")
                .known(path(VESSEL__GASOLINE_ENGINE_ABOARD)).test(s -> s.vessel().getGasolineEngineAboard() != Answer.YES,
                        "a gasoline engine is aboard, so 33 CFR 183 applies as law");
    }

    /** 46 CFR subchapter T speaks to small passenger vessels (46 CFR 175.110). */
    public static Condition<EObject> smallPassengerVessel() {
        return Condition.when("small passenger vessels (46 CFR 175.110)").known(path(VESSEL__SERVICE)).test(
                s -> s.vessel().getService() == VesselService.SMALL_PASSENGER,
                "the vessel is not a small passenger vessel under 46 CFR 175.110");
    }

    /** Sailing yachts, monohull or multihull. */
    public static Condition<EObject> sailing() {
        return Condition.when("sailing yachts").known(path(VESSEL__HULL_KIND)).test(s -> isSailing(s.vessel()),
                "the vessel does not sail");
    }

    /** Motor craft, which roll but do not heel for hours. */
    public static Condition<EObject> motorCraft() {
        return Condition.when("motor craft").known(path(VESSEL__HULL_KIND)).test(s -> !isSailing(s.vessel()), "the vessel sails");
    }

    /** Whether the vessel heels under sail for hours, which is another thing than rolling. */
    public static boolean isSailing(Vessel vessel) {
        return vessel.getHullKind() == HullKind.SAILING_MONOHULL || vessel.getHullKind() == HullKind.SAILING_MULTIHULL;
    }

    /**
     * A question that a person may mark as not applicable.
     *
     * @param question a feature of type {@link Answer} of the check's own subject
     */
    public static <S extends EObject> Condition<S> asked(EStructuralFeature question) {
        return Condition.<S>when("unless marked as not applicable").known(path(question)).test(
                s -> answer(s, question) != Answer.NOT_APPLICABLE, "marked as not applicable by the person who filled it in");
    }

    private static Object answer(Situation<? extends EObject> situation, EStructuralFeature question) {
        return situation.subject().eGet(question);
    }
}
