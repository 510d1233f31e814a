// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.AntiSiphonProtection;
import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class AntiSiphonByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply supply = record.getFuelSupply();

    @BeforeEach
    void theLawApplies() {
        FuelLines.underGasolineLaw(record);
    }

    private Judged by(AntiSiphonProtection protection) {
        supply.setAntiSiphon(protection);
        return judge(AntiSiphonByLaw.check(), record);
    }

    private void shutOff(FuelLineKind kind, String length) {
        supply.getTank().getTop().setZ(Length.valueOf("-0.2 m"));
        supply.setEngineInletHeight(Length.valueOf("0.1 m"));
        supply.setTankShutOffReachableFromOutside(Answer.YES);
        supply.setLineLengthTankToEngine(Length.valueOf(length));
        supply.getLines().clear();
        FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE).setKind(kind);
    }

    @Test
    void valveAtTheTankMeets() {
        // 33 CFR 183.568(b)
        by(AntiSiphonProtection.ANTI_SIPHON_VALVE).meets();
        by(AntiSiphonProtection.ELECTRIC_STOP_VALVE).meets();
    }

    @Test
    void nothingFallsShort() {
        by(AntiSiphonProtection.NONE).fallsShort().afterRemedy().meets();
    }

    @Test
    void wholeLineAboveTheTank() {
        // 33 CFR 183.568(a): the entire line above the level of the tank's top
        supply.getTank().getTop().setZ(Length.valueOf("0.10 m"));
        supply.setLowestLinePoint(Length.valueOf("0.11 m"));
        by(AntiSiphonProtection.LINE_ABOVE_TANK_TOP).meets();
        supply.setLowestLinePoint(Length.valueOf("100 mm"));
        by(AntiSiphonProtection.LINE_ABOVE_TANK_TOP).fallsShort();
        supply.setLowestLinePoint(Length.valueOf("0.05 m"));
        by(AntiSiphonProtection.LINE_ABOVE_TANK_TOP).fallsShort();
    }

    @Test
    void twelveFeetNeedNoSecondShutOff() {
        // 33 CFR 183.568(c): a second valve where the line is longer than 12 ft; 12.0 ft pass without, 12.5 ft fail
        shutOff(FuelLineKind.HOSE_A1, "12.0 ft");
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).meets();
        shutOff(FuelLineKind.HOSE_A1, "3.6576 m");
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).meets();
        shutOff(FuelLineKind.HOSE_A1, "12.5 ft");
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).cannotTell("fuelSupply.engineShutOff");
        supply.setEngineShutOff(Answer.NO);
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).fallsShort();
        supply.setEngineShutOff(Answer.YES);
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).meets();
    }

    @Test
    void shutOffAsksForMetalOrA1() {
        // 33 CFR 183.568(c)
        shutOff(FuelLineKind.COPPER_TUBE, "6 ft");
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).meets();
        shutOff(FuelLineKind.HOSE_B1, "6 ft");
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).fallsShort();
    }

    @Test
    void shutOffAsksForATankBelowTheInlet() {
        // 33 CFR 183.568(c)
        shutOff(FuelLineKind.HOSE_A1, "6 ft");
        supply.getTank().getTop().setZ(Length.valueOf("0.1 m"));
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).fallsShort();
    }

    @Test
    void shutOffAsksForAHandFromOutside() {
        // 33 CFR 183.568(c)
        shutOff(FuelLineKind.HOSE_A1, "6 ft");
        supply.setTankShutOffReachableFromOutside(Answer.NO);
        by(AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE).fallsShort();
    }

    @Test
    void doesNotApplyToADieselBoat() {
        FuelLines.outsideGasolineLaw(record);
        by(AntiSiphonProtection.NONE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheArrangement() {
        judge(AntiSiphonByLaw.check(), record).cannotTell("fuelSupply.antiSiphon");
        by(AntiSiphonProtection.LINE_ABOVE_TANK_TOP).cannotTell("fuelSupply.lowestLinePoint", "fuelSupply.tank.top.z");
    }
}
