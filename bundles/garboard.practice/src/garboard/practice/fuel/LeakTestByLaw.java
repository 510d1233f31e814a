// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.practice.Sources;
import garboard.quantity.Density;

/** 33 CFR 183.542: the fuel system was tested for leaks under pressure. */
final class LeakTestByLaw {

    /** The rule names no density; specific gravity 0.74 is the usual reading. */
    private static final Density GASOLINE = Density.of(740);

    private LeakTestByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-LEAK-TEST-183-542", FuelSupply.class)
            .title("Fuel system was leak-tested at the pressure of the law")
            .why("A joint that weeps fills the bilge with vapour; the pressure test finds it before the first spark does.")
            .basis(Sources.cfr33("183.542").othersSay("the rule names no density: 740 kg/m3 are taken for gasoline; nor a time to hold"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("air or inert gas at 3 psi (20.7 kPa) or 1.5 times the static head at the lowest point, whichever is greater; no leak")
            .applies(FuelConditions.lawForGasoline())
            .needs(LeakTest.inputs())
            .holds(s -> LeakTest.compare(s, density(s), "33 CFR 183.542"))
            .remedy("Test the system again and log it", s -> LeakTest.remedy(s, density(s)))
            .build();
    }

    private static Density density(Situation<FuelSupply> s) {
        return FuelFigures.isGasoline(s) ? GASOLINE : FuelFigures.density(s);
    }
}
