// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.model.GarboardFactory;
import garboard.quantity.Area;
import garboard.quantity.Volume;

/** Compartments for the records of tests. */
final class Compartments {

    private Compartments() {
    }

    /** A closed compartment with a gasoline set that has a cranking motor. */
    static void gasoline(CommissioningRecord record, String netVolume) {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVentilation().setCrankingMotorFitted(Answer.YES);
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(0));
        record.getVentilation().setNetVolume(Volume.valueOf(netVolume));
    }

    static AirDuct addDuct(CommissioningRecord record, DuctFunction function) {
        AirDuct duct = GarboardFactory.eINSTANCE.createAirDuct();
        duct.setId("duct-" + (record.getVentilation().getDucts().size() + 1));
        duct.setFunction(function);
        record.getVentilation().getDucts().add(duct);
        return duct;
    }

    static AirDuct addDuct(CommissioningRecord record, DuctFunction function, String area) {
        AirDuct duct = addDuct(record, function);
        duct.setArea(Area.valueOf(area));
        return duct;
    }
}
