// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__KIND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.FeaturePath;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.SteppingBack;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.Sources;

/** Yard practice: one hose for all places, of the class that may be anywhere. */
final class HoseOfTheBestClass {

    private HoseOfTheBestClass() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-HOSE-A1", FuelLineRun.class)
            .title("All fuel hose is of type A1")
            .why("With one class of hose aboard nobody can fit the wrong one, and fire finds no weak place.")
            .basis(Sources.GERR.othersSay("33 CFR 183.558 grades the hoses of gasoline boats by their place; "
                + "for diesel ABYC H-33 is cited from memory"))
            .gravity(Gravity.ADVICE)
            .limit("A1 or A1-15 everywhere, vent and fill too; rated injection hose at the rail")
            .applies(FuelConditions.hose())
            .applies(Condition.<FuelLineRun>when("hose that is not to ISO 7840").known(FeaturePath.path(FUEL_LINE_RUN__KIND)).test(
                s -> s.subject().getKind() != FuelLineKind.HOSE_ISO_7840,
                "hose to ISO 7840 is the fire-resistant class of its own standard"))
            .applies(SteppingBack.where(HoseClassByPosition.check()))
            .needs(FUEL_LINE_RUN__KIND)
            .holds(s -> FuelFigures.isA1(s.subject().getKind()) ? Comparison.holds("the hose is of type A1", true)
                : s.subject().getKind() == FuelLineKind.INJECTION_HOSE ? Comparison.holds("the hose is injection hose", true)
                : Comparison.holds("the hose is not of type A1", false))
            .remedy("Fit hose of type A1", s -> Optional.of(Remedy.of("Fit hose of type A1 at the next renewal")
                .setting(s.subject(), FUEL_LINE_RUN__KIND, FuelLineKind.HOSE_A1)))
            .build();
    }
}
