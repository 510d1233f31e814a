// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ELECTRIC_PUMP;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LINES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL_SYSTEM;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.model.Answer;
import garboard.model.FuelLineRun;
import garboard.model.FuelSystem;
import garboard.practice.Conditions;

/** When checks of the fuel supply apply. */
final class FuelConditions {

    private FuelConditions() {
    }

    /**
     * 33 CFR 183 subpart J is law: the boat has a gasoline engine, be it the set or another one (183.501). A gasoline set counts even where
     * the question about the boat was answered for its other engines.
     */
    static Condition<EObject> lawForGasoline() {
        return Condition.when("boats with a gasoline engine for power or propulsion (not outboards)")
            .known(path(GENERATOR_SET__FUEL), path(VESSEL__GASOLINE_ENGINE_ABOARD))
            .test(Conditions::gasolineLawBinds, "no gasoline engine is aboard, so 33 CFR 183 does not apply as law");
    }

    /** 33 CFR 183 subpart J is a yardstick only. */
    static Condition<EObject> noLawForGasoline() {
        return Condition.when("boats without a gasoline engine, outboards left out of account")
            .known(path(GENERATOR_SET__FUEL), path(VESSEL__GASOLINE_ENGINE_ABOARD))
            .test(s -> !Conditions.gasolineLawBinds(s), "a gasoline engine is aboard, so 33 CFR 183 applies as law");
    }

    /** Low-pressure feed and a rail: the pressures that the start of the set depends on. */
    static Condition<EObject> portInjectedGasoline() {
        return Condition.when("gasoline sets with port injection").known(path(GENERATOR_SET__FUEL), path(GENERATOR_SET__FUEL_SYSTEM))
            .test(s -> FuelFigures.isGasoline(s) && s.set().getFuelSystem() == FuelSystem.PORT_INJECTION,
                "the set is not a gasoline set with port injection");
    }

    /** Something with narrow bores follows the filter. */
    static Condition<EObject> injection() {
        return Condition.when("diesel sets and injected gasoline sets").known(path(GENERATOR_SET__FUEL_SYSTEM))
            .test(s -> s.set().getFuelSystem() != FuelSystem.CARBURETTOR, "the set has a carburettor");
    }

    /** An electric pump goes on pumping when nobody stops it. */
    static Condition<EObject> electricPump() {
        return Condition.when("electric fuel pumps").known(path(FUEL_SUPPLY__ELECTRIC_PUMP))
            .test(s -> s.record().getFuelSupply().getElectricPump() == Answer.YES, "the fuel pump is not electric");
    }

    /** Rigid tube somewhere in the supply. */
    static Condition<EObject> rigidLine() {
        return Condition.when("where a fuel line is of metal tube").known(path(FUEL_SUPPLY__LINES, FUEL_LINE_RUN__KIND)).test(
            s -> s.record().getFuelSupply().getLines().stream().anyMatch(line -> FuelFigures.isTube(line.getKind())),
            "no fuel line is of metal tube");
    }

    /** The line judged is a hose. */
    static Condition<FuelLineRun> hose() {
        return Condition.<FuelLineRun>when("hoses").known(path(FUEL_LINE_RUN__KIND))
            .test(s -> !FuelFigures.isTube(s.subject().getKind()), "the line is of metal tube");
    }
}
