// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class BlowerRatedCapacityTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged blower(String volume, String flow) {
        Compartments.gasoline(record, volume);
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.valueOf(flow));
        return judge(BlowerRatedCapacity.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"20, 50", "33.9, 50", "34, 51", "60, 90", "100, 150", "150, 175", "319.7, 259.85"})
    void ratedCapacityByVolume(double cubicFeet, double cfm) {
        // 33 CFR Table 183.610, Fr
        blower(cubicFeet + " ft3", "1 ft3/min").fallsShort().limit(cfm, "ft3/min", 0.005);
    }

    @Test
    void exactlyTheTableMeets() {
        blower("60 ft3", "90 cfm").meets();
        blower("60 ft3", "89 cfm").fallsShort();
        blower("60 ft3", "152.92 m3/h").meets();
        blower("1.699 m3", "90 cfm").meets();
    }

    @Test
    void remedyNamesABlowerThatWillDo() {
        // 51 ft3/min, to the next 5
        blower("34 ft3", "30 cfm").afterRemedy().meets().measured(55, "ft3/min", 1e-9);
    }

    @Test
    void openAreaOfFifteenSquareInchesForEachCubicFootExempts() {
        // 33 CFR 183.605: 15 in2 for each ft3: 20 ft3 300 in2, 7.5 ft3 112.5 in2; ISO 11105:2020: 0.34 m2 for each m3
        Compartments.gasoline(record, "20 ft3");
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.of(1, "cfm"));
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(299, "in2"));
        judge(BlowerRatedCapacity.check(), record).fallsShort();
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(300, "in2"));
        judge(BlowerRatedCapacity.check(), record).doesNotApply();
        record.getVentilation().setNetVolume(Volume.of(7.5, "ft3"));
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(112.5, "in2"));
        judge(BlowerRatedCapacity.check(), record).doesNotApply();
        record.getVentilation().setNetVolume(Volume.of(2, "m3"));
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(0.68, "m2"));
        judge(BlowerRatedCapacity.check(), record).fallsShort();
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(0.684, "m2"));
        judge(BlowerRatedCapacity.check(), record).doesNotApply();
    }

    @Test
    void joinedCompartmentsAreRemindedOf() {
        // 33 CFR 183.630: an opening of more than 2 % joins: of 2880 in2, 57.6 in2 do not, 60 in2 do
        record.getVentilation().setConnectedOpeningFraction(Ratio.of(57.6 / 2880));
        assertThat(blower("60 ft3", "90 cfm").verdict().sentence()).doesNotContain("opens into");
        record.getVentilation().setConnectedOpeningFraction(Ratio.of(60.0 / 2880));
        assertThat(blower("60 ft3", "90 cfm").verdict().sentence()).contains("opens into");
    }

    @Test
    void doesNotApplyToDieselOrHandCranking() {
        blower("60 ft3", "1 cfm");
        record.getVentilation().setCrankingMotorFitted(Answer.NO);
        judge(BlowerRatedCapacity.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowerRatedCapacity.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheBlower() {
        Compartments.gasoline(record, "60 ft3");
        judge(BlowerRatedCapacity.check(), record).cannotTell("ventilation.blowerRatedFlow");
    }
}
