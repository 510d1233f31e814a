// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__AMMETER;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__FREQUENCY_METER;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__VOLTMETER;

import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.model.Answer;

/** Voltmeter, ammeter and a means to read the frequency: everything but authority. */
final class Meters {

    private Meters() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("Without meters nobody notices that the set runs slow, unbalanced or overloaded.")
            .gravity(Gravity.DEFECT)
            .limit("a voltmeter, an ammeter and a means to read the frequency")
            .needs(AC_OUTPUT__VOLTMETER, AC_OUTPUT__AMMETER, AC_OUTPUT__FREQUENCY_METER)
            .holds(s -> {
                String lacking = lacking(s.subject());
                return Comparison.holds(lacking.isEmpty() ? "voltage, current and frequency can be read" : "lacking: " + lacking, lacking.isEmpty());
            })
            .remedy("Fit what is lacking, as single meters or one multifunction meter");
    }

    private static String lacking(AcOutput output) {
        return Stream.of(output.getVoltmeter() == Answer.YES ? "" : "voltmeter", output.getAmmeter() == Answer.YES ? "" : "ammeter",
            output.getFrequencyMeter() == Answer.YES ? "" : "frequency meter").filter(name -> !name.isEmpty()).collect(Collectors.joining(", "));
    }
}
