// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Sources;

/** The same test is wise for diesel systems. */
final class LeakTestForDiesel {

    private LeakTestForDiesel() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-LEAK-TEST", FuelSupply.class)
            .title("Fuel system was leak-tested")
            .why("A pressure test finds the joint that drips onto a hot part or draws air, before the first start does.")
            .basis(Sources.yardstick("33 CFR 183.542"))
            .gravity(Gravity.ADVICE)
            .limit("3 psi (20.7 kPa) or 1.5 times the static head at the lowest point, whichever is greater; no leak")
            .applies(FuelConditions.noLawForGasoline())
            .needs(LeakTest.inputs())
            .holds(s -> LeakTest.compare(s, FuelFigures.density(s), "after 33 CFR 183.542"))
            .remedy("Test the system and log it", s -> LeakTest.remedy(s, FuelFigures.density(s)))
            .build();
    }
}
