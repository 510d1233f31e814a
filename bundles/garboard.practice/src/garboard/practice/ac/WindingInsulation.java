// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__INSULATION_RESISTANCE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__INSULATION_TEMPERATURE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.physics.ac.InsulationResistance;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;

/** The insulation resistance reduced to 40 degC against the figure for windings; the two ways to reduce it are both told. */
final class WindingInsulation {

    private static final Resistance TARGET = Resistance.of(5, "Mohm");

    /** Range of the formula for thermosetting insulation. */
    private static final Temperature COLDEST = Temperature.of(10, "degC");
    private static final Temperature HOTTEST = Temperature.of(40, "degC");

    private WindingInsulation() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-INSULATION-WINDING", AcOutput.class)
            .title("Insulation of the winding has a reserve")
            .why("A winding that is damp or dirty but passes today breaks down in the next damp winter.")
            .basis(Sources.IEEE_43.othersSay("5 Mohm is quoted by others, the reduction to 40 degC is from memory; older windings (kV + 1) Mohm"))
            .gravity(Gravity.DEFECT)
            .limit("at least 5 Mohm at 40 degC; borderline where thermoplastic and thermosetting insulation would give different answers")
            .applies(aboveTheFloor())
            .needs(AC_OUTPUT__INSULATION_RESISTANCE, AC_OUTPUT__INSULATION_TEMPERATURE)
            .holds(s -> compare(s.subject()))
            .remedy("Dry the alternator with its heater or warm air, clean it and measure again")
            .build();
    }

    private static Condition<AcOutput> aboveTheFloor() {
        return Condition.<AcOutput>when("unless the insulation is unsound already").known(path(AC_OUTPUT__INSULATION_RESISTANCE))
            .test(s -> !s.subject().getInsulationResistance().isLessThan(Insulation.LEAST), "the insulation is below 1 Mohm already");
    }

    private static Comparison compare(AcOutput output) {
        Resistance measured = output.getInsulationResistance();
        Temperature winding = output.getInsulationTemperature();
        Resistance plastic = InsulationResistance.at40ByHalving(measured, winding);
        String found = Figures.both(measured) + " at " + Figures.both(winding) + " are " + Figures.metric(plastic)
            + " at 40 degC for thermoplastic insulation";
        if (winding.isLessThan(COLDEST) || winding.isMoreThan(HOTTEST)) {
            return Comparison.atLeast(found, plastic, limit());
        }
        Resistance setting = InsulationResistance.at40Thermosetting(measured, winding);
        Resistance middle = Resistance.of((plastic.si() + setting.si()) / 2);
        double halfWidthOhm = Math.abs(plastic.si() - setting.si()) / 2;
        return Comparison.atLeast(found + " and " + Figures.metric(setting) + " for thermosetting",
            halfWidthOhm > 0 ? middle.withAccuracy(Resistance.of(halfWidthOhm)) : middle, limit());
    }

    private static Limit<Resistance> limit() {
        return Limit.of(TARGET, "IEEE 43-2013");
    }
}
