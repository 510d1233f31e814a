// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.PipeFitting;
import garboard.model.PipeFittingKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;

/** Hoses for the records of tests. */
final class Hoses {

    private Hoses() {
    }

    static WaterHoseRun add(CommissioningRecord record, WaterSection section) {
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        hose.setId("hose-" + (record.getRawWater().getHoses().size() + 1));
        hose.setSection(section);
        record.getRawWater().getHoses().add(hose);
        return hose;
    }

    static WaterHoseRun addSuction(CommissioningRecord record) {
        return add(record, WaterSection.SUCTION);
    }

    static void fit(WaterHoseRun hose, int count, PipeFittingKind kind) {
        PipeFitting fitting = GarboardFactory.eINSTANCE.createPipeFitting();
        fitting.setId("fitting-" + (hose.getFittings().size() + 1));
        fitting.setKind(kind);
        fitting.setCount(count);
        hose.getFittings().add(fitting);
    }
}
