// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__WORKING_PRESSURE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.physics.fuel.FuelHose;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** A hose to ISO 7840 or 8469 is not under more pressure than its bore allows. */
final class HoseBearsPressure {

    private static final Length GREATEST_BORE = Length.of(63, "mm");

    private HoseBearsPressure() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-HOSE-PRESSURE", FuelLineRun.class)
            .title("Fuel hose is rated for its pressure")
            .why("A hose for feed pressure bursts or weeps at rail pressure, over a hot engine.")
            .basis(Sources.ISO_7840)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("ISO 7840 and 8469: 0.34 MPa (49 psi) to 10 mm bore, 0.25 MPa (36 psi) to 63 mm")
            .applies(isoHose())
            .applies(boreInScope())
            .applies(underPressure())
            .needs(FUEL_LINE_RUN__WORKING_PRESSURE)
            .holds(s -> Comparison.atMost("the hose of " + Figures.both(s.subject().getBore()) + " bore works at "
                + Figures.both(s.subject().getWorkingPressure()), s.subject().getWorkingPressure(),
                Limit.of(FuelHose.workingPressure(s.subject().getBore()), "ISO 7840 and ISO 8469, for this bore")))
            .remedy("Fit injection hose rated for the pressure, or metal tube")
            .build();
    }

    private static Condition<FuelLineRun> isoHose() {
        return Condition.<FuelLineRun>when("hoses to ISO 7840 or ISO 8469").known(path(FUEL_LINE_RUN__KIND)).test(
            s -> s.subject().getKind() == FuelLineKind.HOSE_ISO_7840 || s.subject().getKind() == FuelLineKind.HOSE_ISO_8469,
            "the line is not a hose to ISO 7840 or ISO 8469");
    }

    private static Condition<FuelLineRun> boreInScope() {
        return Condition.<FuelLineRun>when("bores to 63 mm").known(path(FUEL_LINE_RUN__BORE)).test(
            s -> !FuelFigures.exceeds(s.subject().getBore(), GREATEST_BORE), "the standards end at a bore of 63 mm");
    }

    private static Condition<FuelLineRun> underPressure() {
        return Condition.<FuelLineRun>when("lines under pressure or suction, not vent and fill").known(path(FUEL_LINE_RUN__FUNCTION)).test(
            s -> s.subject().getFunction() != FuelLineFunction.VENT && s.subject().getFunction() != FuelLineFunction.FILL,
            "vent and fill are open to the air");
    }
}
