// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

class LineDropTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_SEPARATOR);

    private Judged drop(FuelKind fuel, String flow, String bore, String length) {
        record.getGeneratorSet().setFuel(fuel);
        record.getFuelSupply().setPumpFlow(VolumeFlow.valueOf(flow));
        line.setBore(Length.valueOf(bore));
        line.setLength(Length.valueOf(length));
        return judge(LineDrop.check(), record);
    }

    @Test
    void coldDieselInAnEightMillimetreLine() {
        // recomputed from 128 mu L Q / (pi D^4), 850 kg/m3 and 8 mm2/s: 1548 Pa; common practice: at most 3 kPa
        drop(FuelKind.DIESEL, "20.6 L/h", "8 mm", "4 m").meets().measured(1548, "Pa", 0.5).limit(3, "kPa", 1e-9);
    }

    @Test
    void thinLineFallsShort() {
        // recomputed from the same: 4893 Pa in 6 mm; 8 mm is the first bore that will do, 6.3 mm still drops 4026 Pa
        drop(FuelKind.DIESEL, "20.6 L/h", "6 mm", "4 m").fallsShort().measured(4893, "Pa", 0.5).afterRemedy().meets();
        assertThat(line.getBore()).isEqualTo(Length.of(8, "mm"));
    }

    @Test
    void gasolineRunsEasily() {
        // recomputed from the same, 758 kg/m3 and 0.72 mm2/s, 3.93 L/h, 3 m, Re 241: 17.8 Pa
        drop(FuelKind.GASOLINE, "3.93 L/h", "8 mm", "3 m").meets().measured(17.8, "Pa", 0.05);
    }

    @Test
    void linesInSeriesAddUp() {
        FuelLineRun second = FuelLines.add(record, FuelLineFunction.SEPARATOR_TO_PUMP);
        second.setBore(Length.of(8, "mm"));
        second.setLength(Length.of(4));
        // 2 x 1548 Pa
        drop(FuelKind.DIESEL, "20.6 L/h", "8 mm", "4 m").fallsShort().measured(3096, "Pa", 0.5);
    }

    @Test
    void cannotTellWithoutTheFlow() {
        line.setBore(Length.of(8, "mm"));
        judge(LineDrop.check(), record).cannotTell("fuelSupply.pumpFlow", "generatorSet.fuel", "fuelSupply.lines[line-1].length");
    }
}
