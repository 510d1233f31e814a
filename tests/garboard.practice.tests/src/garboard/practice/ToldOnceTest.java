// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.model.GarboardFactory;
import garboard.model.StartingBattery;
import garboard.model.TerminalKind;
import garboard.model.ValveKind;
import garboard.model.VesselService;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;
import garboard.quantity.Temperature;

/** Where law and practice ask for the same thing, an installation that lacks it is told so once: by the law where it binds, else by the practice. */
class ToldOnceTest {

    private final CommissioningRecord record = everythingWrong();
    private final LawAndPractice told = new LawAndPractice(record);

    @ParameterizedTest
    @CsvSource({ "EXHAUST-GAS-TIGHT, EXHAUST-GAS-TIGHT-BY-LAW, 182.430", "EXHAUST-SURFACE-TEMPERATURE, EXHAUST-HOT-SURFACE-BY-LAW, 177.970",
        "RAWWATER-HOSE-CLAMPS, RAWWATER-CLAMPS-182-410, 182.410(d)", "RAWWATER-SEACOCK-FITTED, RAWWATER-SEACOCK-179-350, 179.350",
        "RAWWATER-SEACOCK-ZONE, RAWWATER-SEACOCK-179-350, 179.350", "VENT-SEALED, VENT-SEALED-177-405, 177.405(c)",
        "BATTERY-SECURED, BATTERY-SECURED-46CFR, 183.350", "BATTERY-HIGH, BATTERY-HIGH-46CFR, 183.350" })
    void onSmallPassengerVessels(String practice, String law, String reason) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        told.byTheLawAlone(practice, law, reason);
        record.getVessel().setService(VesselService.RECREATIONAL);
        told.byThePracticeAlone(practice, law);
    }

    @Test
    void springClipsOnAPassengerVesselWithoutGasoline() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        onSmallPassengerVessels("BATTERY-TERMINALS", "BATTERY-TERMINALS-46CFR", "against the law");
    }

    @Test
    void wingNutsAreNotTheMatterOfTheLaw() {
        // 33 CFR 183.420(g) and 46 CFR 183.350 speak of spring tension and of permanent connectors only
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getStartingBattery().setTerminals(TerminalKind.WING_NUT);
        assertThat(told.judged("BATTERY-TERMINALS-46CFR").standing()).isEqualTo(Standing.MEETS);
        assertThat(told.judged("BATTERY-TERMINALS").standing()).isEqualTo(Standing.FALLS_SHORT);
    }

    @Test
    void anIntakeAboveTheLineOfTheLawIsToldByThePractice() {
        // 46 CFR 179.350 reaches up to 150 mm; the zone of Gerr ch. 17 to 300 mm
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        Boat.place(record.getRawWater().getPickUp().getPosition(), "0 m", "2 m", "0.2 m");
        assertThat(told.judged("RAWWATER-SEACOCK-179-350").standing()).isEqualTo(Standing.MEETS);
        assertThat(told.judged("RAWWATER-SEACOCK-FITTED").standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(told.judged("RAWWATER-SEACOCK-ZONE").standing()).isEqualTo(Standing.FALLS_SHORT);
    }

    @Test
    void aGasolineSetCountsWhateverWasAnsweredOfTheBoat() {
        // 33 CFR 183.401, .501, .601: any gasoline engine for electricity, mechanical power or propulsion
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        told.byTheLawAlone("BATTERY-TERMINAL-COVERED", "BATTERY-TERMINAL-COVERED-33CFR", "183.420(b)");
    }

    @ParameterizedTest
    @CsvSource({ "FUEL-FLEXIBLE-LINK, FUEL-FLEXIBLE-LINK-183-562, 183.562", "FUEL-RIGID-LINE-SUPPORT, FUEL-FLEXIBLE-LINK-183-562, 183.562",
        "BATTERY-TERMINAL-COVERED, BATTERY-TERMINAL-COVERED-33CFR, 183.420(b)",
        "BATTERY-FUEL-SHIELD-ISO, BATTERY-FUEL-SHIELD-33CFR, 183.420(c)", "BATTERY-TERMINALS, BATTERY-TERMINALS-33CFR, against the law" })
    void onGasolineBoats(String practice, String law, String reason) {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        told.byTheLawAlone(practice, law, reason);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        told.byThePracticeAlone(practice, law);
    }

    /** A motor craft with a gasoline set in which all that the checks above ask for is missing. */
    private static CommissioningRecord everythingWrong() {
        CommissioningRecord record = Boat.motor("7 deg", "0 deg");
        record.getVessel().setWaterlineLength(Length.of(12, "m"));
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getExhaust().setGasTight(Answer.NO);
        record.getExhaust().setDryPartsLagged(Answer.NO);
        record.getExhaust().setDryPartSurfaceTemperature(Temperature.of(300, "degC"));
        record.getVentilation().setSealedFromAccommodation(Answer.NO);
        openToTheSea(record);
        rigidToTheEngine(record);
        loose(record.getStartingBattery());
        return record;
    }

    private static void openToTheSea(CommissioningRecord record) {
        Boat.place(record.getRawWater().getPickUp().getPosition(), "0 m", "0 m", "-0.5 m");
        record.getRawWater().getSeacock().setKind(ValveKind.NONE);
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        hose.setId("hose-1");
        hose.setSection(WaterSection.SUCTION);
        hose.setClampsPerEnd(1);
        record.getRawWater().getHoses().add(hose);
    }

    private static void rigidToTheEngine(CommissioningRecord record) {
        FuelLineRun line = GarboardFactory.eINSTANCE.createFuelLineRun();
        line.setId("line-1");
        line.setFunction(FuelLineFunction.TANK_TO_ENGINE);
        line.setKind(FuelLineKind.COPPER_TUBE);
        record.getFuelSupply().getLines().add(line);
        record.getFuelSupply().setFlexibleLastLink(Answer.NO);
        record.getFuelSupply().setRigidLineSupportDistance(Length.of(1, "m"));
    }

    private static void loose(StartingBattery battery) {
        battery.setSecured(Answer.NO);
        battery.setHighAboveBilge(Answer.NO);
        battery.setTerminals(TerminalKind.SPRING_CLIP);
        battery.setPositiveTerminalCovered(Answer.NO);
        battery.setFuelPartsWithinReach(Answer.YES);
        battery.setDielectricShield(Answer.NO);
    }
}
