// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Evaluator;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Answer;
import garboard.model.Aspiration;
import garboard.model.BatteryChemistry;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.model.GarboardFactory;
import garboard.model.HullKind;
import garboard.model.InsulationRating;
import garboard.model.MufflerKind;
import garboard.model.OutletPlace;
import garboard.model.ProtectionKind;
import garboard.model.SiphonBreakKind;
import garboard.model.SiphonBreakPlace;
import garboard.model.StrandClass;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Current;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.Voltage;
import garboard.quantity.Volume;

/** Where a must falls short, the finer advice of the same matter is not told beside it; once the must is mended, the advice speaks. */
class AdviceStepsBackTest {

    private static final Catalogue CATALOGUE = Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(),
        new SmallPassengerVessels());

    /** A pair, an installation in which the must falls short, and the change after which only the advice does. */
    static Stream<Arguments> pairs() {
        return Stream.of(
            pair("EXHAUST-MUFFLER-VOLUME", "EXHAUST-DRAIN-BACK", r -> drainsBack(r, "4 L"), r -> drainsBack(r, "8 L")),
            pair("EXHAUST-BACK-PRESSURE-RESERVE", "EXHAUST-BACK-PRESSURE", r -> backPressure(r, "9 kPa"), r -> backPressure(r, "8 kPa")),
            pair("EXHAUST-OUTLET-HEELED", "EXHAUST-OUTLET-HEIGHT", r -> sideOutlet(r, "20 mm"), r -> sideOutlet(r, "60 mm")),
            pair("EXHAUST-WET-BORE", "EXHAUST-BORE-PORTS", r -> wetHose(r, "45 mm"), r -> wetHose(r, "51 mm")),
            pair("EXHAUST-INHERENTLY-SAFE", "EXHAUST-SPILL-OVER-HEIGHT", r -> riser(r, "100 mm"), r -> riser(r, "310 mm")),
            pair("EXHAUST-CREST-HEIGHT", "EXHAUST-SUBMERGED-OUTLET-CREST", r -> drownedOutlet(r, "200 mm"), r -> drownedOutlet(r, "350 mm")),
            pair("EXHAUST-CREST-HEIGHT-HEELED", "EXHAUST-SUBMERGED-OUTLET-CREST", r -> offCentreCrest(r, Answer.NO),
                r -> offCentreCrest(r, Answer.YES)),
            pair("FUEL-HOSE-A1", "FUEL-HOSE-CLASS-183-558", r -> hose(r, FuelLineKind.HOSE_ISO_8469), r -> hose(r, FuelLineKind.HOSE_A2)),
            pair("VENT-AREA-RULE", "VENT-COMBUSTION-AIR", r -> airInlet(r, "40 cm2"), r -> airInlet(r, "50 cm2")),
            pair("SIPHON-AFTER-HEAT-EXCHANGER", "SIPHON-PRESSURE-SIDE", r -> loop(r, SiphonBreakPlace.PUMP_SUCTION),
                r -> loop(r, SiphonBreakPlace.BETWEEN_PUMP_AND_HEAT_EXCHANGER)),
            pair("SIPHON-INJECTION-HEIGHT-ADVISED", "SIPHON-INJECTION-HEIGHT", r -> injection(r, "0 m", "200 mm"),
                r -> injection(r, "0 m", "260 mm")),
            pair("SIPHON-INJECTION-HEIGHT-ADVISED", "SIPHON-INJECTION-HEIGHT-HEELED", r -> injection(r, "1.2 m", "260 mm"),
                r -> injection(r, "0 m", "260 mm")),
            pair("SIPHON-HEIGHT-DESIGN", "SIPHON-HEIGHT-UPRIGHT", r -> vent(r, "0 m", "200 mm"), r -> vent(r, "0 m", "350 mm")),
            pair("SIPHON-HEIGHT-ROLLING", "SIPHON-ABOVE-WATER", r -> vent(r, "1.2 m", "100 mm"), r -> vent(r, "1.2 m", "310 mm")),
            pair("SIPHON-HEIGHT-ROLLING", "SIPHON-HEIGHT-HEELED", r -> vent(r, "1.2 m", "290 mm"), r -> vent(r, "1.2 m", "310 mm")),
            pair("BATTERY-FULL", "BATTERY-CHARGE", r -> rested(r, 12.3), r -> rested(r, 12.5)),
            pair("BATTERY-FULL", "BATTERY-CRANKABLE", r -> rested(r, 11.5), r -> rested(r, 12.5)),
            pair("BATTERY-CHARGE", "BATTERY-CRANKABLE", r -> rested(r, 11.5), r -> rested(r, 12.3)),
            pair("CABLE-CRANKING-RESISTANCE-HEAVY", "CABLE-CRANKING-RESISTANCE", r -> cranking(r, "50 mm2"), r -> cranking(r, "70 mm2")),
            pair("CABLE-DEVICE-RATING", "CABLE-DEVICE-RATING-33CFR", r -> fused(r, Answer.YES, 100), r -> fused(r, Answer.YES, 80)),
            pair("CABLE-DEVICE-RATING", "CABLE-DEVICE-RATING-LITERAL", r -> fused(r, Answer.NO, 100), r -> fused(r, Answer.NO, 80)));
    }

    private static Arguments pair(String advice, String must, Consumer<CommissioningRecord> bad, Consumer<CommissioningRecord> half) {
        return Arguments.of(advice, must, bad, half);
    }

    @ParameterizedTest(name = "{0} behind {1}")
    @MethodSource("pairs")
    void theMustIsToldAloneAndThenTheAdvice(String advice, String must, Consumer<CommissioningRecord> bad, Consumer<CommissioningRecord> half) {
        CommissioningRecord record = boat();
        bad.accept(record);
        assertThat(judged(must, record).standing()).as("%s: %s", must, judged(must, record).sentence()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(judged(advice, record).standing()).as("%s beside it", advice).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(judged(advice, record).sentence()).contains("falls short already");
        CommissioningRecord mended = boat();
        half.accept(mended);
        assertThat(judged(must, mended).standing()).as("%s: %s", must, judged(must, mended).sentence()).isNotEqualTo(Standing.FALLS_SHORT);
        assertThat(judged(advice, mended).standing()).as("%s: %s", advice, judged(advice, mended).sentence()).isEqualTo(Standing.FALLS_SHORT);
    }

    private static Verdict judged(String id, CommissioningRecord record) {
        Check<?> check = CATALOGUE.find(id).orElseThrow();
        List<Verdict> verdicts = new Evaluator(CATALOGUE).evaluate(check, record, Judged.DAY);
        assertThat(verdicts).as(id).isNotEmpty();
        return verdicts.getFirst();
    }

    private static CommissioningRecord boat() {
        CommissioningRecord record = Boat.motor("7 deg", "0 deg");
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        record.getAcOutput().setOutputCable(null);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        return record;
    }

    // 50.8 mm over 1.6 m hold 3.24 L: more than half of 4 L, less than a third of 8 L no more
    private static void drainsBack(CommissioningRecord record, String usable) {
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
        section(record, ExhaustSection.MUFFLER_TO_CREST, "50.8 mm").setSlopesBackToMuffler(Answer.YES);
        record.getExhaust().getMuffler().setVolumeToInlet(Volume.valueOf(usable));
    }

    private static ExhaustSectionRun section(CommissioningRecord record, ExhaustSection place, String bore) {
        ExhaustSectionRun run = GarboardFactory.eINSTANCE.createExhaustSectionRun();
        run.setId("run-" + place);
        run.setSection(place);
        run.setBore(Length.valueOf(bore));
        run.setLength(Length.of(1.6, "m"));
        record.getExhaust().getSections().add(run);
        return run;
    }

    private static void backPressure(CommissioningRecord record, String pressure) {
        record.getGeneratorSet().setAspiration(Aspiration.NATURALLY_ASPIRATED);
        record.getExhaust().setMeasuredBackPressure(GaugePressure.valueOf(pressure));
    }

    private static void sideOutlet(CommissioningRecord record, String height) {
        record.getExhaust().getOutlet().setPlace(OutletPlace.SIDE);
        Boat.place(record.getExhaust().getOutlet().getInsideBottom(), "0 m", "1.4 m", height);
    }

    private static void wetHose(CommissioningRecord record, String bore) {
        record.getExhaust().getMuffler().setOutletBore(Length.valueOf("50.8 mm"));
        section(record, ExhaustSection.MUFFLER_TO_CREST, bore);
        section(record, ExhaustSection.DRY, "40 mm");
    }

    private static void riser(CommissioningRecord record, String height) {
        record.getExhaust().getMuffler().setKind(MufflerKind.IN_LINE);
        record.getExhaust().getRiser().getDryCrestInside().setZ(Length.valueOf(height));
        record.getExhaust().getCrest().getInsideBottom().setZ(Length.of(450, "mm"));
    }

    private static void drownedOutlet(CommissioningRecord record, String crest) {
        record.getExhaust().getOutlet().setPlace(OutletPlace.UNDERWATER);
        Boat.place(record.getExhaust().getOutlet().getInsideBottom(), "0 m", "0 m", "-300 mm");
        record.getExhaust().getCrest().setVented(Answer.NO);
        Boat.place(record.getExhaust().getCrest().getInsideBottom(), "0 m", "0 m", crest);
    }

    private static void offCentreCrest(CommissioningRecord record, Answer vented) {
        drownedOutlet(record, "250 mm");
        record.getExhaust().getCrest().setVented(vented);
        record.getExhaust().getCrest().getInsideBottom().setY(Length.of(1.2, "m"));
    }

    private static void hose(CommissioningRecord record, FuelLineKind kind) {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        FuelLineRun line = GarboardFactory.eINSTANCE.createFuelLineRun();
        line.setId("line-1");
        line.setFunction(FuelLineFunction.FILL);
        line.setKind(kind);
        record.getFuelSupply().getLines().add(line);
    }

    // 22.47 kW: 43.4 cm2 for the air that is burnt, 58.9 cm2 by Gerr's rule
    private static void airInlet(CommissioningRecord record, String area) {
        record.getGeneratorSet().setShaftPower(Power.of(22.47, "kW"));
        record.getVentilation().setSupplyAreaTotal(Area.valueOf(area));
    }

    private static void loop(CommissioningRecord record, SiphonBreakPlace place) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        record.getRawWater().getSiphonBreak().setPlace(place);
    }

    private static void injection(CommissioningRecord record, String offCentre, String height) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.NONE);
        Boat.place(record.getRawWater().getInjection(), "0 m", offCentre, height);
    }

    private static void vent(CommissioningRecord record, String offCentre, String height) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        Boat.place(record.getRawWater().getSiphonBreak().getVentSeat(), "0 m", offCentre, height);
    }

    private static void rested(CommissioningRecord record, double volts) {
        record.getStartingBattery().setChemistry(BatteryChemistry.FLOODED_LEAD_ACID);
        record.getStartingBattery().setBlockVoltage(Voltage.of(12, "V"));
        record.getStartingBattery().setBlocksInSeries(1);
        record.getStartingBattery().setRestedVoltage(Voltage.of(volts, "V"));
    }

    private static CableRun cable(CommissioningRecord record, CableFunction function, String size) {
        CableRun run = GarboardFactory.eINSTANCE.createCableRun();
        run.setFunction(function);
        run.setConductorSize(size);
        record.getStartingBattery().getCables().add(run);
        return run;
    }

    private static void cranking(CommissioningRecord record, String size) {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        for (CableFunction function : List.of(CableFunction.CRANKING_POSITIVE, CableFunction.CRANKING_NEGATIVE)) {
            CableRun run = cable(record, function, size);
            run.setStrandClass(StrandClass.CLASS_5PLAIN);
            run.setLength(Length.of(3, "m"));
        }
    }

    // 10 AWG at 105 degC in an engine space: 76.5 A, by the letter of the law 90 A
    private static void fused(CommissioningRecord record, Answer gasoline, double amperes) {
        record.getVessel().setGasolineEngineAboard(gasoline);
        CableRun run = cable(record, CableFunction.OTHER_DC, "10 AWG");
        run.setProtection(ProtectionKind.FUSE);
        run.setInsulation(InsulationRating.C105);
        run.setInEngineSpace(Answer.YES);
        run.setProtectionRating(Current.of(amperes, "A"));
    }
}
