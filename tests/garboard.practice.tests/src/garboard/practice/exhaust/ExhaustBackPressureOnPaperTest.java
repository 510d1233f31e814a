// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.bend;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Aspiration;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.GeneratorSet;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;

class ExhaustBackPressureOnPaperTest {

    /** Exhaust flow 0.03589 kg/s. */
    private static CommissioningRecord diesel() {
        CommissioningRecord record = liftMuffler();
        GeneratorSet set = record.getGeneratorSet();
        set.setAspiration(Aspiration.NATURALLY_ASPIRATED);
        set.setShaftPower(Power.valueOf("22.47 kW"));
        set.setSpecificFuelConsumption(SpecificConsumption.valueOf("250 g/kWh"));
        set.setAirFuelRatio(Ratio.valueOf("22 1"));
        set.setExhaustGasTemperature(Temperature.valueOf("450 degC"));
        exhaust(record).getMuffler().setPressureLoss(PressureDifference.valueOf("1.5 kPa"));
        exhaust(record).getRiser().setLiftHeight(Length.valueOf("0.90 m"));
        return record;
    }

    /** Dry part of 50 mm with one standard bend, wet part of 63.5 mm with three long ones. */
    private static CommissioningRecord twentyKilowattDiesel() {
        CommissioningRecord record = diesel();
        bend(add(record, ExhaustSection.DRY, "50 mm", "0.30 m"), ExhaustBendKind.STANDARD_90, 1);
        bend(add(record, ExhaustSection.MUFFLER_TO_CREST, "63.5 mm", "3.0 m"), ExhaustBendKind.LONG_90, 3);
        return record;
    }

    @Test
    void isBorderlineWhereOnlyAGaugeCanTell() {
        // Dry 0.2140 kPa, wet 2 x 0.1042, muffler 1.5, lift 9.047 as a solid column: 1.92 to 10.97 kPa, 6.45 in the middle. Recomputed independently
        // from the metric form (from memory); limit 2.5 inHg: Gerr
        Verdict verdict = judge(ExhaustBackPressureOnPaper.check(), twentyKilowattDiesel()).is(Standing.BORDERLINE).measured(6.45, "kPa", 0.005)
            .limit(8.466, "kPa", 0.0005).verdict();
        assertThat(verdict.sentence()).contains("1.92 kPa").contains("11 kPa");
    }

    @Test
    void aLowerLiftPassesEvenAsASolidColumn() {
        // Lift that passes 3 inHg (10.16 kPa) with a solid column: 0.819 m
        CommissioningRecord record = twentyKilowattDiesel();
        record.getGeneratorSet().getMakerLimits().setMaximumBackPressure(GaugePressure.valueOf("3 inHg"));
        judge(ExhaustBackPressureOnPaper.check(), record).is(Standing.BORDERLINE).limitFromMaker().afterRemedy().meets();
        assertThat(exhaust(record).getRiser().getLiftHeight().in("m")).isEqualTo(0.815);
        exhaust(record).getRiser().setLiftHeight(Length.valueOf("0.820 m"));
        judge(ExhaustBackPressureOnPaper.check(), record).is(Standing.BORDERLINE);
    }

    @Test
    void fallsShortWhereEvenAnEmptyLiftIsTooMuch() {
        CommissioningRecord record = twentyKilowattDiesel();
        record.getGeneratorSet().getMakerLimits().setMaximumBackPressure(GaugePressure.valueOf("1.9 kPa"));
        Verdict verdict = judge(ExhaustBackPressureOnPaper.check(), record).fallsShort().verdict();
        assertThat(verdict.remedy().orElseThrow().text()).contains("larger hose");
    }

    // wet part at 60 degC, 3.0 m and three long bends: 38.1 mm 1.040 kPa, 50.8 mm 0.282, 63.5 mm 0.104, 76.2 mm 0.0466, times 2; recomputed
    // independently
    @ParameterizedTest
    @CsvSource({ "38.1 mm, 2.080, 0.001", "50.8 mm, 0.564, 0.001", "63.5 mm, 0.208, 0.001", "76.2 mm, 0.0932, 0.0001" })
    void countsTheWetHoseTwice(String bore, double expected, double half) {
        CommissioningRecord record = muffler(diesel(), MufflerKind.NONE);
        exhaust(record).getRiser().setLiftHeight(Length.valueOf("0 m"));
        record.getGeneratorSet().setExhaustMassFlow(MassFlow.valueOf("0.03589 kg/s"));
        ExhaustSectionRun wet = add(record, ExhaustSection.CREST_TO_OUTLET, bore, "3.0 m");
        wet.setGasTemperature(Temperature.valueOf("60 degC"));
        bend(wet, ExhaustBendKind.LONG_90, 3);
        judge(ExhaustBackPressureOnPaper.check(), record).meets().measured(expected, "kPa", half);
    }

    @Test
    void reckonsASmallGasolineSet() {
        // dry 600 degC, 38 mm, 1.504 m with the bend: 0.0906 kPa; wet 55 degC, 38.1 mm, 3.524 m: 0.0788 kPa, times 2; recomputed independently
        CommissioningRecord record = muffler(diesel(), MufflerKind.NONE);
        GeneratorSet set = record.getGeneratorSet();
        set.setShaftPower(Power.valueOf("8.125 kW"));
        set.setSpecificFuelConsumption(SpecificConsumption.valueOf("360 g/kWh"));
        set.setAirFuelRatio(Ratio.valueOf("14 1"));
        set.setExhaustGasTemperature(Temperature.valueOf("600 degC"));
        exhaust(record).getRiser().setLiftHeight(Length.valueOf("0 m"));
        bend(add(record, ExhaustSection.DRY, "38 mm", "0.25 m"), ExhaustBendKind.STANDARD_90, 1);
        ExhaustSectionRun wet = add(record, ExhaustSection.MUFFLER_TO_CREST, "38.1 mm", "2.0 m");
        wet.setGasTemperature(Temperature.valueOf("55 degC"));
        bend(wet, ExhaustBendKind.LONG_90, 2);
        judge(ExhaustBackPressureOnPaper.check(), record).meets().measured(0.2482, "kPa", 0.00015);
    }

    @Test
    void addsASilencerAndLeavesOutTheDrain() {
        CommissioningRecord record = twentyKilowattDiesel();
        exhaust(record).setSilencerLoss(PressureDifference.valueOf("1 kPa"));
        add(record, ExhaustSection.SEPARATOR_DRAIN);
        judge(ExhaustBackPressureOnPaper.check(), record).is(Standing.BORDERLINE).measured(7.45, "kPa", 0.005);
    }

    @Test
    void doesNotApplyOnceItIsMeasured() {
        CommissioningRecord record = twentyKilowattDiesel();
        exhaust(record).setMeasuredBackPressure(GaugePressure.valueOf("5 kPa"));
        judge(ExhaustBackPressureOnPaper.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutRunOrGas() {
        judge(ExhaustBackPressureOnPaper.check(), Installation.empty()).cannotTell("exhaust.sections.section", "exhaust.sections.bore",
            "exhaust.sections.length", "exhaust.riser.liftHeight", "exhaust.muffler.kind");
        CommissioningRecord noPower = twentyKilowattDiesel();
        noPower.getGeneratorSet().setShaftPower(null);
        judge(ExhaustBackPressureOnPaper.check(), noPower).cannotTell("generatorSet.shaftPower");
        CommissioningRecord noHeat = twentyKilowattDiesel();
        noHeat.getGeneratorSet().setExhaustGasTemperature(null);
        judge(ExhaustBackPressureOnPaper.check(), noHeat).cannotTell("generatorSet.exhaustGasTemperature");
        CommissioningRecord noLoss = twentyKilowattDiesel();
        exhaust(noLoss).getMuffler().setPressureLoss(null);
        judge(ExhaustBackPressureOnPaper.check(), noLoss).cannotTell("exhaust.muffler.pressureLoss");
        CommissioningRecord noCount = twentyKilowattDiesel();
        exhaust(noCount).getSections().getLast().getBends().getFirst().setCount(null);
        judge(ExhaustBackPressureOnPaper.check(), noCount).cannotTell("exhaust.sections[run-2].bends[run-2-bend-1].count");
    }
}
