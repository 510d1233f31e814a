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
import garboard.model.GeneratorSet;
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
     * excepted (33 CFR 183.401, .501, .601). The set is one of the boat's engines, whatever was answered of the others.
     */
    public static Condition<EObject> boatWithGasolineEngine() {
        return Condition.when("boats with a gasoline engine for power or propulsion (not outboards)")
                .known(path(VESSEL__GASOLINE_ENGINE_ABOARD)).uses(path(GENERATOR_SET__FUEL)).test(Conditions::gasolineLawBinds,
                        "no gasoline engine is aboard, so 33 CFR 183 does not apply as law");
    }

    /** Boats on which 33 CFR 183 is a yardstick and no law. */
    public static Condition<EObject> boatWithoutGasolineEngine() {
        return Condition.when("boats without a gasoline engine, outboards left out of account")
                .known(path(VESSEL__GASOLINE_ENGINE_ABOARD)).uses(path(GENERATOR_SET__FUEL)).test(s -> !gasolineLawBinds(s),
                        "a gasoline engine is aboard, so 33 CFR 183 applies as law");
    }

    /**
     * What the law for gasoline boats asks for as well is told once, as law. Where neither the answer nor the set's fuel is entered
     * the practice speaks.
     */
    public static Condition<EObject> unlessLawForGasoline(String section) {
        return Condition.when("unless 33 CFR " + section + " asks for it as law").known()
                .uses(path(VESSEL__GASOLINE_ENGINE_ABOARD), path(GENERATOR_SET__FUEL)).test(s -> !gasolineLawBinds(s),
                        "33 CFR " + section + " asks for it on this boat, as law");
    }

    /** What the law for small passenger vessels asks for as well is told once, as law. Where the service is not entered the practice speaks. */
    public static Condition<EObject> unlessLawForPassengers(String section) {
        return Condition.when("unless 46 CFR " + section + " asks for it as law").known().uses(path(VESSEL__SERVICE)).test(
                s -> !carriesPassengers(s), "46 CFR " + section + " asks for it on this vessel, as law");
    }

    /** Whether the record says that a gasoline engine is aboard, be it the set or another one: 33 CFR 183 is law then. */
    public static boolean gasolineLawBinds(Situation<?> s) {
        boolean aboard = s.optional(s.record().getVessel(), Vessel::getGasolineEngineAboard).filter(Answer.YES::equals).isPresent();
        return aboard || s.optional(s.record().getGeneratorSet(), GeneratorSet::getFuel).filter(FuelKind.GASOLINE::equals).isPresent();
    }

    /** Whether the record says that the vessel is a small passenger vessel under 46 CFR 175.110. */
    public static boolean carriesPassengers(Situation<?> s) {
        return s.optional(s.record().getVessel(), Vessel::getService).filter(VesselService.SMALL_PASSENGER::equals).isPresent();
    }

    /** 46 CFR subchapter T speaks to small passenger vessels (46 CFR 175.110). */
    public static Condition<EObject> smallPassengerVessel() {
        return Condition.when("small passenger vessels (46 CFR 175.110)").known(path(VESSEL__SERVICE)).test(Conditions::carriesPassengers,
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
