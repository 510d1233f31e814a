// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__PLACE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_FITTED;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__STANDARD;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.MUFFLER__KIND;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.Aspiration;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.model.MufflerKind;
import garboard.model.OutletPlace;

/** When checks of the exhaust apply. */
final class ExhaustConditions {

    private static final Set<MufflerKind> LIFTING = Set.of(MufflerKind.LIFT_MUFFLER, MufflerKind.COMBINED_LIFT_AND_SEPARATOR);
    private static final Set<MufflerKind> SEPARATING = Set.of(MufflerKind.GAS_WATER_SEPARATOR, MufflerKind.COMBINED_LIFT_AND_SEPARATOR);
    private static final Set<OutletPlace> ABOVE_WATER = Set.of(OutletPlace.TRANSOM, OutletPlace.SIDE);
    private static final Set<ExhaustHoseStandard> RIGID = Set.of(ExhaustHoseStandard.METAL_PIPE, ExhaustHoseStandard.FIBRE_REINFORCED_TUBE);

    private ExhaustConditions() {
    }

    static Condition<EObject> mufflerFitted() {
        return Condition.when("exhausts with a muffler").known(path(MUFFLER__KIND))
            .test(s -> kind(s) != MufflerKind.NONE, "no muffler is fitted");
    }

    /** The exhaust gas lifts the water out of the muffler. */
    static Condition<EObject> liftMuffler() {
        return Condition.when("exhausts with a lift muffler").known(path(MUFFLER__KIND)).test(ExhaustConditions::lifts,
            "no lift muffler is fitted");
    }

    static boolean lifts(Situation<?> situation) {
        return LIFTING.contains(kind(situation));
    }

    /** Water and gas leave the boat apart from each other. */
    static Condition<EObject> separatorFitted() {
        return Condition.when("exhausts with a gas and water separator").known(path(MUFFLER__KIND))
            .test(s -> SEPARATING.contains(kind(s)), "no gas and water separator is fitted");
    }

    /** The outlet is meant to be out of the water. */
    static Condition<EObject> outletMeantToBeDry() {
        return Condition.when("outlets in the transom or the topsides").known(path(EXHAUST_OUTLET__PLACE)).test(
            s -> ABOVE_WATER.contains(exhaust(s).getOutlet().getPlace()), "the outlet is made to lie under water");
    }

    static Condition<ExhaustSectionRun> hose() {
        return Condition.<ExhaustSectionRun>when("hoses").known(path(EXHAUST_SECTION_RUN__STANDARD))
            .test(s -> !RIGID.contains(s.subject().getStandard()), "this part is a rigid pipe or tube");
    }

    static Condition<EObject> turbocharged() {
        return Condition.when("turbocharged sets").known(path(GENERATOR_SET__ASPIRATION))
            .test(s -> s.set().getAspiration() != Aspiration.NATURALLY_ASPIRATED, "the set is naturally aspirated");
    }

    static Condition<EObject> temperatureAlarmFitted() {
        return Condition.when("where an exhaust temperature alarm is fitted").known(path(EXHAUST_RUN__TEMPERATURE_ALARM))
            .test(s -> exhaust(s).getTemperatureAlarm() == Answer.YES, "no exhaust temperature alarm is fitted");
    }

    static Condition<EObject> testTapFitted() {
        return Condition.when("where a tap for the gauge is fitted").known(path(EXHAUST_RUN__TEST_TAP_FITTED))
            .test(s -> exhaust(s).getTestTapFitted() == Answer.YES, "no tap is fitted");
    }

    private static MufflerKind kind(Situation<?> situation) {
        return exhaust(situation).getMuffler().getKind();
    }

    private static ExhaustRun exhaust(Situation<?> situation) {
        return situation.record().getExhaust();
    }
}
