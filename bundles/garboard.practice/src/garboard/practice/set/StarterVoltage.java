// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__STARTER_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SYSTEM_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.GeneratorSet;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The starter is made for the voltage that the set starts on. */
final class StarterVoltage {

    private static final double SPREAD = 0.05;

    private StarterVoltage() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-STARTER-VOLTAGE", GeneratorSet.class)
            .title("Starter is made for the set's starting voltage")
            .why("A 12 V starter on 24 V throws its pinion and burns; a 24 V starter on 12 V does not turn.")
            .basis(Basis.derived("the nominal voltages are the same or they are not"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("the same nominal voltage")
            .needs(GENERATOR_SET__STARTER_VOLTAGE, GENERATOR_SET__SYSTEM_VOLTAGE)
            .holds(s -> {
                Voltage starter = s.subject().getStarterVoltage();
                Voltage system = s.subject().getSystemVoltage();
                return Comparison.holds("the starter is for " + Figures.both(starter) + ", the set starts on " + Figures.both(system),
                    Math.abs(starter.si() - system.si()) <= SPREAD * system.si());
            })
            .remedy("Fit the starter for the battery's voltage, or the battery for the starter's")
            .build();
    }
}
