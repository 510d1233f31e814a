// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.physics.fuel.FuelSystem33Cfr183;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Volume;

/** 33 CFR 183.558: which class of hose may be where in a gasoline system. */
final class HoseClassByPosition {

    private HoseClassByPosition() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-HOSE-CLASS-183-558", FuelLineRun.class)
            .title("Fuel hose is of the class that its place asks for")
            .why("Hose of a lower class burns through in less than two and a half minutes, or sweats gasoline into the bilge.")
            .basis(Sources.cfr33("183.558 with 183.540"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("pump to carburettor: A1; tank to engine: A1, or B1 when a cut hose spills at most 5 fl oz in 2.5 min;"
                + " vent and fill: A1 or A2, or B1 or B2 on the same test")
            .applies(FuelConditions.lawForGasoline())
            .applies(FuelConditions.hose())
            .applies(placeNamed())
            .needs(FUEL_LINE_RUN__KIND)
            .needsWhen(HoseClassByPosition::asksForSpillTest, path(FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME))
            .holds(HoseClassByPosition::compare)
            .remedy("Fit hose of type A1", s -> Optional.of(Remedy.of("Fit hose marked as USCG type A1")
                .setting(s.subject(), FUEL_LINE_RUN__KIND, FuelLineKind.HOSE_A1)))
            .build();
    }

    private static Condition<FuelLineRun> placeNamed() {
        return Condition.<FuelLineRun>when("lines that the rule names").known(path(FUEL_LINE_RUN__FUNCTION)).test(
            s -> s.subject().getFunction() != FuelLineFunction.RETURN, "the rule does not name the return line");
    }

    private static Comparison compare(Situation<FuelLineRun> s) {
        if (allowed(s)) {
            return Comparison.holds("the hose is of class " + words(s), true);
        }
        if (!asksForSpillTest(s)) {
            return Comparison.holds("hose of class " + words(s) + " is not allowed here", false);
        }
        Volume spill = s.record().getFuelSupply().getFlexibleHoseSpillVolume();
        return Comparison.atMost("the hose is of class " + words(s) + "; cut through, it spills " + Figures.both(spill) + " in 2.5 min",
            spill, Limit.of(FuelSystem33Cfr183.SEVERED_HOSE_LIMIT, "33 CFR 183.558(b), 5 oz read as fluid ounces"));
    }

    private static boolean allowed(Situation<FuelLineRun> s) {
        FuelLineKind kind = s.subject().getKind();
        return FuelFigures.isA1(kind) || ventOrFill(s) && kind == FuelLineKind.HOSE_A2;
    }

    private static boolean asksForSpillTest(Situation<FuelLineRun> s) {
        return switch (s.subject().getKind()) {
            case HOSE_B1 -> s.subject().getFunction() != FuelLineFunction.PUMP_TO_CARBURETTOR;
            case HOSE_B2 -> ventOrFill(s);
            default -> false;
        };
    }

    private static boolean ventOrFill(Situation<FuelLineRun> s) {
        return s.subject().getFunction() == FuelLineFunction.VENT || s.subject().getFunction() == FuelLineFunction.FILL;
    }

    private static String words(Situation<FuelLineRun> s) {
        return switch (s.subject().getKind()) {
            case HOSE_A1 -> "A1";
            case HOSE_A1_15 -> "A1-15";
            case HOSE_A2 -> "A2";
            case HOSE_B1 -> "B1";
            case HOSE_B2 -> "B2";
            default -> "no USCG type";
        };
    }
}
