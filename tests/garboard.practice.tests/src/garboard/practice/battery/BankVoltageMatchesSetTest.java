// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Voltage;

class BankVoltageMatchesSetTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    private void bank(int inSeries, int inParallel, String system) {
        battery.setBlocksInSeries(inSeries);
        battery.setStringsInParallel(inParallel);
        record.getGeneratorSet().setSystemVoltage(Voltage.valueOf(system));
    }

    // derived: four 12 V blocks as 2S2P make 24 V, two as 2S 24 V, two as 2P 12 V
    @ParameterizedTest
    @CsvSource({ "2, 2, 24 V, MEETS, 24", "2, 1, 24 V, MEETS, 24", "1, 2, 12 V, MEETS, 12", "1, 2, 24 V, FALLS_SHORT, 12",
        "2, 1, 12 V, FALLS_SHORT, 24",
        "2, 1, 24000 mV, MEETS, 24" })
    void seriesAddsAndParallelDoesNot(int inSeries, int inParallel, String system, Standing standing, double bankV) {
        bank(inSeries, inParallel, system);
        judge(BankVoltageMatchesSet.check(), record).is(standing).measured(bankV, "V", 1e-9);
    }

    @Test
    void remedyConnectsTheRightNumber() {
        bank(1, 2, "24 V");
        judge(BankVoltageMatchesSet.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getBlocksInSeries()).isEqualTo(2);
    }

    @Test
    void remedyComputesNothingForBlocksThatDoNotFit() {
        bank(1, 1, "30 V");
        assertThat(judge(BankVoltageMatchesSet.check(), record).fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void cannotTellWithoutTheSetsVoltage() {
        judge(BankVoltageMatchesSet.check(), record).cannotTell("generatorSet.systemVoltage");
    }
}
