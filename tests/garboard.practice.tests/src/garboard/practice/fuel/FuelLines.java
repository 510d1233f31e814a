// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.model.GarboardFactory;

/** Fuel lines for the records of tests. */
final class FuelLines {

    private FuelLines() {
    }

    static FuelLineRun add(CommissioningRecord record, FuelLineFunction function) {
        FuelLineRun line = GarboardFactory.eINSTANCE.createFuelLineRun();
        line.setId("line-" + (record.getFuelSupply().getLines().size() + 1));
        line.setFunction(function);
        record.getFuelSupply().getLines().add(line);
        return line;
    }

    /** A diesel set in a boat that has a gasoline engine besides: 33 CFR 183 looks at the boat. */
    static void underGasolineLaw(CommissioningRecord record) {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    /** A diesel boat. */
    static void outsideGasolineLaw(CommissioningRecord record) {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
    }
}
