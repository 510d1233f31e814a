// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;
import garboard.session.trial.MeasuredLoad.From;

class MeasuredLoadTest {

    private final CommissioningRecord record = TrialRecords.withTrial();
    private final Reading reading = TrialRecords.MAKE.createReading();

    @Test
    void takesThePowerThatWasRead() {
        rated("6.5 kW", PhaseSystem.SINGLE_PHASE);
        reading.setPower(Power.valueOf("4.9 kW"));
        reading.setVoltage1(Voltage.valueOf("120 V"));
        reading.setCurrent1(Current.valueOf("90 A"));

        MeasuredLoad load = load();

        assertThat(load.from()).isEqualTo(From.POWER);
        // 4.9 / 6.5
        assertThat(load.share().orElseThrow().in("%")).isCloseTo(75.4, within(0.05));
    }

    @Test
    void reckonsThreePhasesFromTheVoltageBetweenLines() {
        rated("20 kW", PhaseSystem.THREE_PHASE);
        volts("400 V", "400 V", "400 V");
        amperes("36 A", "36 A", "36 A");
        reading.setPowerFactor(Ratio.valueOf("0.8"));

        // recomputed from P = sqrt(3) U I pf: 400 V, 36 A, 0.8 -> 19.95 kW
        assertThat(load().power().in("kW")).isCloseTo(19.95, within(0.005));
        assertThat(load().from()).isEqualTo(From.VOLTS_AMPERES_AND_FACTOR);
        assertThat(load().share().orElseThrow().in("%")).isCloseTo(99.8, within(0.05));
    }

    @Test
    void guessesNoPhaseThatWasNotRead() {
        rated("20 kW", PhaseSystem.THREE_PHASE);
        volts("400 V", null, null);
        amperes("36 A", "36 A", null);

        assertThat(MeasuredLoad.of(reading, record)).isEmpty();
    }

    @Test
    void addsTheLegsOfASplitPhase() {
        rated("12 kW", PhaseSystem.SPLIT_PHASE);
        volts("120 V", "118 V", null);
        amperes("40 A", "20 A", null);
        reading.setPowerFactor(Ratio.valueOf("1"));

        // 120 V x 40 A + 118 V x 20 A = 7.16 kW
        assertThat(load().power().in("kW")).isCloseTo(7.16, within(1e-9));
    }

    @Test
    void holdsVoltAmperesAgainstTheApparentRating() {
        rated("16 kW", PhaseSystem.SINGLE_PHASE);
        record.getGeneratorSet().setRatedApparentPower(ApparentPower.valueOf("20 kVA"));
        volts("230 V", null, null);
        amperes("43.5 A", null, null);

        // 230 V x 43.5 A = 10.005 kVA, of 20 kVA 50.0 %
        assertThat(load().from()).isEqualTo(From.VOLTS_AND_AMPERES);
        assertThat(load().share().orElseThrow().in("%")).isCloseTo(50.0, within(0.05));
    }

    @Test
    void tellsNoShareWithoutARating() {
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        reading.setPower(Power.valueOf("4 kW"));

        assertThat(load().share()).isEmpty();
    }

    @Test
    void saysNothingOfReadingsThatCannotBe() {
        rated("20 kW", PhaseSystem.SINGLE_PHASE);
        volts("230 V", null, null);
        amperes("40 A", null, null);
        reading.setPowerFactor(Ratio.valueOf("8"));

        assertThat(MeasuredLoad.of(reading, record)).isEmpty();
    }

    private MeasuredLoad load() {
        return MeasuredLoad.of(reading, record).orElseThrow();
    }

    private void rated(String power, PhaseSystem phases) {
        record.getGeneratorSet().setRatedPower(Power.valueOf(power));
        record.getGeneratorSet().setPhases(phases);
    }

    private void volts(String first, String second, String third) {
        reading.setVoltage1(Voltage.valueOf(first));
        reading.setVoltage2(second == null ? null : Voltage.valueOf(second));
        reading.setVoltage3(third == null ? null : Voltage.valueOf(third));
    }

    private void amperes(String first, String second, String third) {
        reading.setCurrent1(Current.valueOf(first));
        reading.setCurrent2(second == null ? null : Current.valueOf(second));
        reading.setCurrent3(third == null ? null : Current.valueOf(third));
    }
}
