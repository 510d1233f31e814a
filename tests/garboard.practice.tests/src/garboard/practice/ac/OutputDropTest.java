// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.StrandClass;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;
import garboard.quantity.Temperature;

class OutputDropTest {

    private static CommissioningRecord cable(String apparent, String voltage, PhaseSystem phases, String size, String length) {
        CommissioningRecord record = Board.set(apparent, voltage, phases);
        CableRun cable = record.getAcOutput().getOutputCable();
        cable.setConductorSize(size);
        cable.setStrandClass(StrandClass.CLASS_5PLAIN);
        cable.setLength(Length.valueOf(length));
        return record;
    }

    @Test
    void outAndBack() {
        // Ohm's law with IEC 60228: 40 A over 15 m (30 m loop) of 10 mm2 class 5 at 60 degC 2.65 V; 3 % of 230 V 6.9 V
        judge(OutputDrop.check(), cable("9.2 kVA", "230 V", PhaseSystem.SINGLE_PHASE, "10 mm2", "15 m")).meets().measured(2.65, "V", 0.005)
            .limit(6.9, "V", 1e-9);
    }

    @Test
    void betweenThreeLines() {
        // Ohm's law with IEC 60228 (50 mm2 class 5: 0.386 ohm/km), recomputed independently: sqrt(3) x 100 A x 0.0386 ohm at 20 degC
        CommissioningRecord record = cable("69.282 kVA", "400 V", PhaseSystem.THREE_PHASE, "50 mm2", "100 m");
        record.getAcOutput().getOutputCable().setConductorTemperature(Temperature.of(20, "degC"));
        judge(OutputDrop.check(), record).meets().measured(6.686, "V", 0.0005).limit(12, "V", 1e-9);
    }

    @Test
    void remedyIsALargerCable() {
        CommissioningRecord record = cable("9.2 kVA", "230 V", PhaseSystem.SINGLE_PHASE, "2.5 mm2", "15 m");
        judge(OutputDrop.check(), record).fallsShort().afterRemedy().meets();
        // 4 mm2: 40 A x 30 m x 4.95 ohm/km x 1.157 = 6.87 V, within 6.9 V
        assertThat(record.getAcOutput().getOutputCable().getConductorSize()).isEqualTo("4 mm2");
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(OutputDrop.check(), Installation.empty()).cannotTell("acOutput.outputCable.conductorSize", "acOutput.outputCable.length",
            "generatorSet.ratedVoltage", "generatorSet.phases");
        CommissioningRecord record = cable("9.2 kVA", "230 V", PhaseSystem.SINGLE_PHASE, "10 mm2", "15 m");
        record.getAcOutput().getOutputCable().setStrandClass(StrandClass.NOT_ENTERED);
        judge(OutputDrop.check(), record).cannotTell("acOutput.outputCable.strandClass");
    }

    @Test
    void doesNotApplyWhereTheSizeCannotBeRead() {
        judge(OutputDrop.check(), cable("9.2 kVA", "230 V", PhaseSystem.SINGLE_PHASE, "10", "15 m")).doesNotApply();
    }
}
