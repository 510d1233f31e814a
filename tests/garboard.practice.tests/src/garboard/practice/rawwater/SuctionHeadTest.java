// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PipeFittingKind;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

class SuctionHeadTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterHoseRun hose = Hoses.addSuction(record);

    @BeforeEach
    void twoAndAHalfMetresOfHose() {
        record.getRawWater().setDesignSeaTemperature(Temperature.of(25, "degC"));
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.of(24.5, "L/min"));
        hose.setKind(WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE);
        hose.setLength(Length.of(2.5));
        // sum of K 6.2: 0.5 entrance, 2 x 0.1 barbs, 0.9 + 0.6 elbows, 4 strainer;
        // engineering tables citing Crane TP-410, the strainer common practice
        Hoses.fit(hose, 1, PipeFittingKind.ENTRANCE_SHARP);
        Hoses.fit(hose, 2, PipeFittingKind.HOSE_BARB);
        Hoses.fit(hose, 1, PipeFittingKind.ELBOW_90);
        Hoses.fit(hose, 1, PipeFittingKind.ELBOW_90_LONG);
        Hoses.fit(hose, 1, PipeFittingKind.STRAINER_CLEAN);
    }

    private Judged head(String bore, String pumpHeight) {
        hose.setBore(Length.valueOf(bore));
        record.getRawWater().getPump().getPosition().setZ(Length.valueOf(pumpHeight));
        return judge(SuctionHead.check(), record);
    }

    @Test
    void threeQuarterInchHoseLosesAMetre() {
        // recomputed from Darcy-Weisbach and Colebrook, 0.03 mm wall, nu 9.37e-7 m2/s: 0.3755 m friction + 0.6488 m fittings
        head("19.05 mm", "0 mm").meets().measured(1.024, "m", 0.001).limit(4, "ft", 1e-9);
    }

    @Test
    void inchHoseLosesLess() {
        // recomputed from the same: 0.0907 m + 0.2053 m
        head("1 in", "0 mm").meets().measured(0.296, "m", 0.0005);
    }

    @Test
    void corrugatedBoreCostsMore() {
        hose.setKind(WaterHoseKind.CORRUGATED_BORE);
        // recomputed from the same with a 1 mm wall: f 0.0654, 0.418 m
        head("25.4 mm", "0 mm").meets().measured(0.418, "m", 0.0005);
    }

    @Test
    void narrowCorrugatedHoseIsReckonedAtTheEndOfColebrooksRange() {
        hose.setKind(WaterHoseKind.CORRUGATED_BORE);
        // recomputed from the same with a wall of a twentieth of the bore: 0.9934 m + 0.6488 m
        head("19.05 mm", "0 mm").fallsShort().measured(1.642, "m", 0.001);
    }

    @Test
    void liftAddsToTheLoss() {
        // Gerr ch. 19: 4 ft (1.219 m) without the pump maker's word
        head("19.05 mm", "150 mm").meets();
        head("19.05 mm", "250 mm").fallsShort().measured(1.274, "m", 0.001);
    }

    @Test
    void pumpBelowTheWaterIsFedByIt() {
        Judged fed = head("19.05 mm", "-1.2 m").meets().measured(-0.176, "m", 0.001);
        assertThat(fed.verdict().sentence()).contains("runs to the pump by itself", "1.2 m (47.2 in) under water").doesNotContain("draws");
    }

    @Test
    void severalHosesAddUp() {
        WaterHoseRun second = Hoses.addSuction(record);
        second.setKind(WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE);
        second.setLength(Length.of(2.5));
        second.setBore(Length.valueOf("1 in"));
        Hoses.fit(second, 1, PipeFittingKind.HOSE_BARB);
        // 0.296 m and 0.0907 + 0.1 / 6.2 * 0.2053 m
        head("1 in", "0 mm").measured(0.390, "m", 0.001);
    }

    @Test
    void remedyIsTheNextBore() {
        head("19.05 mm", "500 mm").fallsShort().afterRemedy().meets();
        assertThat(hose.getBore().in("mm")).isEqualTo(25.4);
    }

    @Test
    void remedyTellsWhereTheWaterThenRunsByItself() {
        record.getGeneratorSet().getMakerLimits().setMaximumRawWaterSuctionHead(Length.of(0));
        // 19.05 mm: 1.024 m; the next sizes lose less than the 0.7 m that the pump stands under water
        assertThat(head("19.05 mm", "-0.7 m").fallsShort().verdict().remedy().orElseThrow().text()).contains("runs to the pump by itself");
    }

    @Test
    void noHoseHelpsAPumpTooHigh() {
        var remedy = head("1 in", "1.5 m").fallsShort().verdict().remedy().orElseThrow();
        assertThat(remedy.changes()).isEmpty();
        // 1.219 m less the loss of 0.296 m
        assertThat(remedy.text()).contains("923 mm");
    }

    @Test
    void makersHeadReplacesGerr() {
        record.getGeneratorSet().getMakerLimits().setMaximumRawWaterSuctionHead(Length.of(1, "m"));
        head("19.05 mm", "0 mm").fallsShort().limitFromMaker();
    }

    @Test
    void cannotTellWithoutFittings() {
        hose.getFittings().clear();
        head("1 in", "0 mm").cannotTell("rawWater.hoses[hose-1].fittings.kind", "rawWater.hoses[hose-1].fittings.count");
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NOT_ENTERED")
    void everyFittingOfTheModelHasItsLoss(PipeFittingKind kind) {
        Hoses.fit(hose, 1, kind);
        assertThat(head("1 in", "0 mm").verdict().standing()).isIn(Standing.MEETS, Standing.FALLS_SHORT);
    }
}
