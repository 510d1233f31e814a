// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class HoseOfTheBestClassTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.FILL);

    private Judged kind(FuelLineKind kind) {
        line.setKind(kind);
        return judge(HoseOfTheBestClass.check(), record);
    }

    @Test
    void a1Everywhere() {
        // Gerr: A1 for all fuel hose
        kind(FuelLineKind.HOSE_A1).meets();
        kind(FuelLineKind.HOSE_A1_15).meets();
        kind(FuelLineKind.HOSE_A2).fallsShort().afterRemedy().meets();
        kind(FuelLineKind.HOSE_ISO_8469).fallsShort();
    }

    @Test
    void injectionHoseIsAMatterOfPressure() {
        kind(FuelLineKind.INJECTION_HOSE).meets();
    }

    @Test
    void doesNotApplyToTheFireResistantHoseOfIso7840() {
        // ISO 7840:2021, scope: fire-resistant fuel hoses; ISO 8469 is the class that is not
        kind(FuelLineKind.HOSE_ISO_7840).doesNotApply();
    }

    @Test
    void doesNotApplyToTube() {
        kind(FuelLineKind.STEEL_TUBE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(HoseOfTheBestClass.check(), record).cannotTell("fuelSupply.lines[line-1].kind");
    }
}
