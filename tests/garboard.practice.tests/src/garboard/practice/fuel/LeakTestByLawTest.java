// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

class LeakTestByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aGasolineSet() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getFuelSupply().setLeakTestHeld(Answer.YES);
    }

    private Judged test(String head, String pressure) {
        record.getFuelSupply().getTank().getTop().setZ(Length.valueOf("0 m"));
        record.getFuelSupply().setHighestLinePoint(Length.of(-0.1));
        record.getFuelSupply().setLowestLinePoint(Length.of(-Length.valueOf(head).si()));
        record.getFuelSupply().setLeakTestPressure(GaugePressure.valueOf(pressure));
        return judge(LeakTestByLaw.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"4 ft, 3.0000", "8 ft, 3.8497", "10 ft, 4.8122", "6.23 ft, 3.0000"})
    void pressureByHead(String head, double psi) {
        // 33 CFR 183.542: 3 psi or 1.5 x static head; recomputed with specific gravity 0.74, 0.32081 psi/ft
        test(head, "1 psi").fallsShort().limit(psi, "psi", 0.00005);
    }

    @Test
    void exactlyThreePsiMeets() {
        test("1.5 m", "3 psi").meets();
        test("1.5 m", "20.69 kPa").meets();
        test("1.5 m", "2.9 psi").fallsShort();
    }

    @Test
    void lineAboveTheTankAddsToTheHead() {
        test("4 ft", "3 psi").meets();
        record.getFuelSupply().setHighestLinePoint(Length.valueOf("4 ft"));
        judge(LeakTestByLaw.check(), record).fallsShort().limit(3.8497, "psi", 0.00005);
    }

    @Test
    void leakFallsShortAtAnyPressure() {
        record.getFuelSupply().setLeakTestHeld(Answer.NO);
        assertThat(test("4 ft", "10 psi").fallsShort().verdict().remedy().orElseThrow().text()).contains("21 kPa");
    }

    @Test
    void dieselSetBesideAGasolineEngineIsHeavier() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        // recomputed with 840 kg/m3: 1.5 x 16.48 kPa
        test("2 m", "20 kPa").fallsShort().limit(24.7, "kPa", 0.05);
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        test("4 ft", "1 psi").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheTest() {
        judge(LeakTestByLaw.check(), record).cannotTell("fuelSupply.leakTestPressure", "fuelSupply.tank.top.z",
            "fuelSupply.highestLinePoint", "fuelSupply.lowestLinePoint");
    }
}
