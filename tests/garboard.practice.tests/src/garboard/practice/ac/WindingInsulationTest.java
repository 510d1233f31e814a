// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;

class WindingInsulationTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged measured(String resistance, String temperature) {
        record.getAcOutput().setInsulationResistance(Resistance.valueOf(resistance));
        record.getAcOutput().setInsulationTemperature(Temperature.valueOf(temperature));
        return judge(WindingInsulation.check(), record);
    }

    // IEEE 43, formulas from memory: 8 Mohm at 20 degC -> 2.0 by halving, 6.1 for thermosetting insulation: the verdict depends on the method
    @Test
    void isBorderlineWhereTheTwoMethodsDiffer() {
        Judged judged = measured("8 Mohm", "20 degC").is(Standing.BORDERLINE).limit(5, "Mohm", 1e-9);
        assertThat(judged.verdict().sentence()).contains("2 Mohm").contains("6.1 Mohm");
    }

    // IEEE 43, formulas from memory: 40 Mohm at 30 degC -> 20 by halving
    @Test
    void meetsByBothMethods() {
        assertThat(measured("40 Mohm", "30 degC").meets().verdict().sentence()).contains("20 Mohm");
        measured("40 Mohm", "86 degF").meets();
    }

    @Test
    void fallsShortByBothMethods() {
        measured("4 Mohm", "40 degC").fallsShort().measured(4, "Mohm", 1e-9); // no reduction at 40 degC
    }

    @Test
    void exactlyAtTheLimit() {
        measured("5 Mohm", "40 degC").meets();
    }

    @Test
    void halvingAloneCountsOutsideTheRangeOfTheOtherFormula() {
        measured("2.5 Mohm", "50 degC").meets().measured(5, "Mohm", 1e-6); // doubled for 10 K above 40 degC
        measured("79 Mohm", "0 degC").fallsShort().measured(79.0 / 16, "Mohm", 1e-6); // halved four times for 40 K below
    }

    @Test
    void stepsBackWhereTheInsulationIsUnsound() {
        measured("0.9 Mohm", "20 degC").doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(WindingInsulation.check(), record).cannotTell("acOutput.insulationResistance", "acOutput.insulationTemperature");
    }
}
