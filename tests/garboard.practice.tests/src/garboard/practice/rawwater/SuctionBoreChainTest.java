// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.RawWaterCircuit;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class SuctionBoreChainTest {

    private final CommissioningRecord record = Installation.empty();
    private final RawWaterCircuit circuit = record.getRawWater();
    private final WaterHoseRun hose = Hoses.addSuction(record);

    @BeforeEach
    void anInchAllTheWay() {
        circuit.getPickUp().setBore(Length.valueOf("1 in"));
        circuit.getSeacock().setBore(Length.valueOf("1 in"));
        circuit.getStrainer().setPortBore(Length.valueOf("25.4 mm"));
        hose.setBore(Length.valueOf("1 in"));
        circuit.getPump().setInletBore(Length.valueOf("1 in"));
    }

    @Test
    void meetsWhenAllAreAsWideAsTheInlet() {
        // common practice: everything before the pump at least as wide as its inlet
        judge(SuctionBoreChain.check(), record).meets().limit(25.4, "mm", 1e-9);
    }

    @Test
    void fallsShortByTheNarrowestPart() {
        circuit.getSeacock().setBore(Length.valueOf("3/4 in"));
        circuit.getStrainer().setPortBore(Length.valueOf("22 mm"));
        var verdict = judge(SuctionBoreChain.check(), record).fallsShort().measured(19.05, "mm", 1e-9).verdict();
        assertThat(verdict.sentence()).contains("the seacock");
    }

    @Test
    void remedyWidensAllThatIsNarrow() {
        circuit.getSeacock().setBore(Length.valueOf("3/4 in"));
        hose.setBore(Length.valueOf("19 mm"));
        judge(SuctionBoreChain.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void hosesBehindThePumpDoNotCount() {
        Hoses.add(record, WaterSection.PUMP_TO_ENGINE).setBore(Length.valueOf("1/2 in"));
        judge(SuctionBoreChain.check(), record).meets();
    }

    @Test
    void makersBoreReplacesTheInlet() {
        record.getGeneratorSet().getMakerLimits().setMinimumRawWaterHoseBore(Length.of(32, "mm"));
        circuit.getPump().setInletBore(null);
        judge(SuctionBoreChain.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutASuctionHose() {
        circuit.getHoses().clear();
        judge(SuctionBoreChain.check(), record).cannotTell("rawWater.hoses.bore");
    }
}
