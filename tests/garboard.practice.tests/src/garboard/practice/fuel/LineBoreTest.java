// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class LineBoreTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.SEPARATOR_TO_PUMP);

    private Judged bore(String bore) {
        line.setBore(Length.valueOf(bore));
        return judge(LineBore.check(), record);
    }

    @Test
    void sixMillimetresAreUsual() {
        // common practice: 6 to 10 mm (1/4 to 3/8 in)
        bore("6 mm").meets();
        bore("1/4 in").meets();
        bore("5 mm").fallsShort().limit(6, "mm", 1e-9).afterRemedy().meets();
    }

    @Test
    void makersBoreReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setMinimumFuelLineBore(Length.of(10, "mm"));
        bore("8 mm").fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void returnAndVentAreNotItsMatter() {
        line.setFunction(FuelLineFunction.RETURN);
        assertThat(Judged.all(LineBore.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutTheBore() {
        judge(LineBore.check(), record).cannotTell("fuelSupply.lines[line-1].bore");
    }
}
