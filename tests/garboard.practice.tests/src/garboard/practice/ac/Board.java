// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ElectricalLoad;
import garboard.model.FuelKind;
import garboard.model.GarboardFactory;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;
import garboard.model.PhaseSystem;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** Sets, cables and loads to judge; all as text, as a person writes them. */
final class Board {

    private Board() {
    }

    /** A record whose set has this plate. */
    static CommissioningRecord set(String apparent, String voltage, PhaseSystem phases) {
        CommissioningRecord record = Installation.empty();
        plate(record, apparent, voltage, phases);
        return record;
    }

    static void plate(CommissioningRecord record, String apparent, String voltage, PhaseSystem phases) {
        record.getGeneratorSet().setRatedApparentPower(ApparentPower.valueOf(apparent));
        record.getGeneratorSet().setRatedVoltage(Voltage.valueOf(voltage));
        record.getGeneratorSet().setPhases(phases);
    }

    /** A set of a yacht within the scope of ISO 13297, on a vessel whose law is not that of passenger vessels. */
    static CommissioningRecord yacht() {
        CommissioningRecord record = set("8 kVA", "230 V", PhaseSystem.SINGLE_PHASE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        return record;
    }

    static void passengers(CommissioningRecord record) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    static void gasolineBoat(CommissioningRecord record) {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    static void dieselBoat(CommissioningRecord record) {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
    }

    /** One more load: what it draws, and the share of it that counts. */
    static ElectricalLoad load(CommissioningRecord record, String name, String power, String demandFactor) {
        ElectricalLoad load = GarboardFactory.eINSTANCE.createElectricalLoad();
        load.setName(name);
        load.setKind(LoadKind.RESISTIVE);
        load.setPower(Power.valueOf(power));
        load.setDemandFactor(Ratio.valueOf(demandFactor));
        record.getAcOutput().getLoads().add(load);
        return load;
    }

    /** One more motor, with its power factor. */
    static ElectricalLoad motor(CommissioningRecord record, String power, String powerFactor, MotorStarting starting) {
        ElectricalLoad load = load(record, "pump", power, "1");
        load.setKind(LoadKind.MOTOR);
        load.setPowerFactor(Ratio.valueOf(powerFactor));
        load.setStarting(starting);
        return load;
    }
}
