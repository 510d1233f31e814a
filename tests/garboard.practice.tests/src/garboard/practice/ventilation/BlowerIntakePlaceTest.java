// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class BlowerIntakePlaceTest {

    private final CommissioningRecord record = Installation.empty();
    private final AirDuct duct = Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE);

    @BeforeEach
    void aCompartmentThreeFeetHigh() {
        Compartments.gasoline(record, "60 ft3");
        record.getVentilation().setCompartmentHeight(Length.of(36, "in"));
        record.getVentilation().setBilgeWaterHeight(Length.of(4, "in"));
    }

    private Judged mouth(String height) {
        duct.setMouthHeight(Length.valueOf(height));
        return judge(BlowerIntakePlace.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"3 in, FALLS_SHORT", "4 in, FALLS_SHORT", "10 in, MEETS", "12 in, MEETS", "304.8 mm, MEETS", "13 in, FALLS_SHORT"})
    void aboveBilgeWaterAndInTheLowestThird(String height, Standing standing) {
        // 33 CFR 183.610(d): 36 in high, bilge water 4 in: 3 in fail, 10 and 12 in pass, 13 in fail
        mouth(height).is(standing);
    }

    @Test
    void worstDuctDecides() {
        AirDuct second = Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE);
        second.setMouthHeight(Length.of(20, "in"));
        second.setName("port");
        assertThat(mouth("10 in").fallsShort().limit(12, "in", 1e-9).verdict().sentence()).contains("port");
    }

    @Test
    void otherDuctsDoNotCount() {
        Compartments.addDuct(record, DuctFunction.NATURAL_SUPPLY).setMouthHeight(Length.of(30, "in"));
        mouth("10 in").meets();
    }

    @Test
    void remedyBringsItBetween() {
        mouth("30 in").afterRemedy().meets();
        mouth("1 in").afterRemedy().meets();
    }

    @Test
    void noPlaceIsGoodWhereTheBilgeIsFull() {
        record.getVentilation().setBilgeWaterHeight(Length.of(14, "in"));
        assertThat(mouth("10 in").fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void doesNotApplyToDieselOrWhereExempt() {
        mouth("30 in");
        record.getVentilation().setCrankingMotorFitted(Answer.NO);
        judge(BlowerIntakePlace.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowerIntakePlace.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutADuct() {
        record.getVentilation().getDucts().clear();
        judge(BlowerIntakePlace.check(), record).cannotTell("ventilation.ducts.mouthHeight");
    }
}
