// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ENGINE_INLET_HEIGHT;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ENGINE_SHUT_OFF;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LOWEST_LINE_POINT;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__TOP;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.AntiSiphonProtection;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.model.FuelSupply;
import garboard.physics.fuel.FuelSystem33Cfr183;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.568: a broken fuel line does not siphon the tank into the boat. */
final class AntiSiphonByLaw {

    private AntiSiphonByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-ANTI-SIPHON-183-568", FuelSupply.class)
            .title("Tank cannot siphon out through a broken line")
            .why("A line that cracks below the top of the tank empties it into the bilge, with nobody aboard to notice.")
            .basis(Sources.cfr33("183.568").othersSay("the rule speaks of the carburettor; here the fuel inlet of the engine is meant"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("whole line above the top of the tank; or an anti-siphon valve or electric stop valve at the tank; or, with"
                + " the tank's top"
                + " below the engine's inlet, metal or A1 line and a shut-off reached from outside, and a second one beyond 12 ft (3.66 m)")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SUPPLY__ANTI_SIPHON)
            .needsWhen(s -> by(s, AntiSiphonProtection.LINE_ABOVE_TANK_TOP), path(FUEL_SUPPLY__LOWEST_LINE_POINT))
            .needsWhen(s -> by(s, AntiSiphonProtection.LINE_ABOVE_TANK_TOP), path(FUEL_TANK__TOP, POINT__Z))
            .needsWhen(AntiSiphonByLaw::byShutOff, path(FUEL_TANK__TOP, POINT__Z))
            .needsWhen(AntiSiphonByLaw::byShutOff, path(FUEL_SUPPLY__ENGINE_INLET_HEIGHT))
            .needsWhen(AntiSiphonByLaw::byShutOff, path(FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE))
            .needsWhen(AntiSiphonByLaw::byShutOff, path(FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE))
            .needsWhen(AntiSiphonByLaw::byShutOff, SuctionLines.lines().then(FUEL_LINE_RUN__KIND))
            .needsWhen(s -> byShutOff(s) && isLong(s), path(FUEL_SUPPLY__ENGINE_SHUT_OFF))
            .uses(SuctionLines.function())
            .holds(AntiSiphonByLaw::compare)
            .remedy("Fit an anti-siphon valve at the tank", s -> Optional.of(Remedy.of(
                "Fit an anti-siphon valve or an electric stop valve at the tank's withdrawal fitting")
                .setting(s.subject(), FUEL_SUPPLY__ANTI_SIPHON, AntiSiphonProtection.ANTI_SIPHON_VALVE)))
            .build();
    }

    private static Comparison compare(Situation<FuelSupply> s) {
        return switch (s.subject().getAntiSiphon()) {
            case LINE_ABOVE_TANK_TOP -> Comparison.moreThan("the lowest point of the line is "
                + DesignAttitude.heightInWords(s.subject().getLowestLinePoint()) + ", the top of the tank "
                + DesignAttitude.heightInWords(top(s)), s.subject().getLowestLinePoint(), Limit.of(top(s), "top of the tank"));
            case ANTI_SIPHON_VALVE -> Comparison.holds("an anti-siphon valve is at the tank", true);
            case ELECTRIC_STOP_VALVE -> Comparison.holds("an electric stop valve is at the tank", true);
            case TANK_SHUT_OFF_WITH_RATED_LINE -> shutOff(s);
            default -> Comparison.holds("nothing keeps the tank from siphoning out", false);
        };
    }

    private static Comparison shutOff(Situation<FuelSupply> s) {
        if (!top(s).isLessThan(s.subject().getEngineInletHeight())) {
            return Comparison.holds("the top of the tank is not below the engine's inlet, so a shut-off alone will not do", false);
        }
        if (!SuctionLines.of(s.record()).stream().map(FuelLineRun::getKind).allMatch(AntiSiphonByLaw::metalOrA1)) {
            return Comparison.holds("a shut-off alone asks for metal or A1 lines all the way", false);
        }
        if (s.subject().getTankShutOffReachableFromOutside() != Answer.YES) {
            return Comparison.holds("the shut-off at the tank cannot be worked from outside the compartment", false);
        }
        if (isLong(s) && s.subject().getEngineShutOff() != Answer.YES) {
            return Comparison.holds("the line is " + Figures.both(s.subject().getLineLengthTankToEngine())
                + " long and has no second shut-off at the engine", false);
        }
        return Comparison.holds("the tank lies below the engine's inlet, the lines are metal or A1 and can be shut off from outside", true);
    }

    private static boolean metalOrA1(FuelLineKind kind) {
        return FuelFigures.isTube(kind) || FuelFigures.isA1(kind);
    }

    private static boolean by(Situation<FuelSupply> s, AntiSiphonProtection protection) {
        return s.subject().getAntiSiphon() == protection;
    }

    private static boolean byShutOff(Situation<FuelSupply> s) {
        return by(s, AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE);
    }

    private static boolean isLong(Situation<FuelSupply> s) {
        return FuelFigures.exceeds(s.subject().getLineLengthTankToEngine(), FuelSystem33Cfr183.SECOND_SHUT_OFF_BEYOND);
    }

    private static Length top(Situation<FuelSupply> s) {
        return s.subject().getTank().getTop().getZ();
    }
}
