// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Volume;

class HoseClassByPositionTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged hose(FuelLineFunction function, FuelLineKind kind) {
        line.setFunction(function);
        line.setKind(kind);
        return judge(HoseClassByPosition.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"PUMP_TO_CARBURETTOR, HOSE_A1", "TANK_TO_ENGINE, HOSE_A1", "TANK_TO_SEPARATOR, HOSE_A1_15", "VENT, HOSE_A1",
        "VENT, HOSE_A2", "FILL, HOSE_A1", "FILL, HOSE_A2"})
    void alwaysAllowed(FuelLineFunction function, FuelLineKind kind) {
        // 33 CFR 183.558(a)
        hose(function, kind).meets();
    }

    @ParameterizedTest
    @CsvSource({"PUMP_TO_CARBURETTOR, HOSE_B1", "PUMP_TO_CARBURETTOR, HOSE_A2", "TANK_TO_ENGINE, HOSE_A2", "TANK_TO_ENGINE, HOSE_B2",
        "FILL, OTHER", "TANK_TO_ENGINE, HOSE_ISO_8469"})
    void neverAllowed(FuelLineFunction function, FuelLineKind kind) {
        // 33 CFR 183.558(a), 183.540
        record.getFuelSupply().setFlexibleHoseSpillVolume(Volume.of(0, "mL"));
        hose(function, kind).fallsShort();
    }

    @ParameterizedTest
    @CsvSource({"TANK_TO_ENGINE, HOSE_B1", "VENT, HOSE_B1", "VENT, HOSE_B2", "FILL, HOSE_B1", "FILL, HOSE_B2"})
    void lowerClassOnTheSpillTest(FuelLineFunction function, FuelLineKind kind) {
        // 33 CFR 183.558(b): at most 5 oz in 2.5 min, 147.87 mL: 140 mL pass, 150 mL fail; without the test one has to ask
        hose(function, kind).cannotTell("fuelSupply.flexibleHoseSpillVolume");
        record.getFuelSupply().setFlexibleHoseSpillVolume(Volume.of(140, "mL"));
        hose(function, kind).meets().limit(147.87, "mL", 0.005);
        record.getFuelSupply().setFlexibleHoseSpillVolume(Volume.of(150, "mL"));
        hose(function, kind).fallsShort().afterRemedy().meets();
        record.getFuelSupply().setFlexibleHoseSpillVolume(Volume.of(5, "fl oz"));
        hose(function, kind).meets();
    }

    @Test
    void gasolineSetIsUnderTheLawWhateverIsSaidOfOtherEngines() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        hose(FuelLineFunction.PUMP_TO_CARBURETTOR, FuelLineKind.HOSE_B1).fallsShort();
    }

    @Test
    void doesNotApplyToTubeReturnOrDieselBoat() {
        hose(FuelLineFunction.TANK_TO_ENGINE, FuelLineKind.COPPER_TUBE).doesNotApply();
        hose(FuelLineFunction.RETURN, FuelLineKind.HOSE_B1).doesNotApply();
        FuelLines.outsideGasolineLaw(record);
        hose(FuelLineFunction.PUMP_TO_CARBURETTOR, FuelLineKind.HOSE_B1).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(HoseClassByPosition.check(), record).cannotTell("fuelSupply.lines[line-1].kind");
    }
}
