// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NO_LOAD_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PERFORMANCE_CLASS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.model.PerformanceClass;
import garboard.physics.ac.NoLoadCheck;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** The voltage without load, by the class that the set is declared for. */
final class NoLoadVoltage {

    private NoLoadVoltage() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NO-LOAD-VOLTAGE", AcOutput.class)
            .title("Voltage without load is within the set's class")
            .why("A regulator that is set too high ages lamps and electronics from the first hour.")
            .basis(Sources.DGUV_203_032)
            .gravity(Gravity.DEFECT)
            .limit("rated voltage and 5 % (G1; 10 % up to 10 kW), 2.5 % (G2) or 1 % (G3)")
            .applies(NoLoad.classWithFigures())
            .applies(notDangerous())
            .needs(AC_OUTPUT__NO_LOAD_VOLTAGE, GENERATOR_SET__RATED_VOLTAGE, GENERATOR_SET__PERFORMANCE_CLASS)
            .needsWhen(s -> s.set().getPerformanceClass() == PerformanceClass.G1, path(GENERATOR_SET__RATED_POWER))
            .holds(s -> Comparison.atMost(inWords(s.subject()), s.subject().getNoLoadVoltage(),
                Limit.of(NoLoadCheck.highestVoltage(s.set().getRatedVoltage(), NoLoad.wanted(s), NoLoad.traits(s)), NoLoad.origin(s))))
            .remedy("Set the voltage regulator lower")
            .build();
    }

    private static Condition<AcOutput> notDangerous() {
        return Condition.<AcOutput>when("unless the voltage is dangerous to appliances already").known(path(AC_OUTPUT__NO_LOAD_VOLTAGE),
            path(GENERATOR_SET__RATED_VOLTAGE)).test(s -> !s.subject().getNoLoadVoltage().isMoreThan(NoLoadOvervoltage.most(s)),
                "the voltage is more than 10 % too high already");
    }

    static String inWords(AcOutput output) {
        return "without load the set gives " + Figures.both(output.getNoLoadVoltage());
    }
}
