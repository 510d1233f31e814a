// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import java.util.List;

import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.StrandClass;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

/** Cables to judge. */
final class Wiring {

    private Wiring() {
    }

    /** One more cable at the battery, of which only the function is entered. */
    static CableRun add(CommissioningRecord record, CableFunction function) {
        CableRun run = GarboardFactory.eINSTANCE.createCableRun();
        run.setFunction(function);
        record.getStartingBattery().getCables().add(run);
        return run;
    }

    /** A record whose only cable is one at the battery; the output cable is not entered, so that a check has one subject. */
    static CommissioningRecord withoutOutputCable() {
        CommissioningRecord record = Installation.empty();
        record.getAcOutput().setOutputCable(null);
        return record;
    }

    /** Positive and negative cranking cable of one size and length. */
    static void cranking(CommissioningRecord record, String size, StrandClass make, String lengthOfEach) {
        for (CableFunction function : List.of(CableFunction.CRANKING_POSITIVE, CableFunction.CRANKING_NEGATIVE)) {
            CableRun run = add(record, function);
            run.setConductorSize(size);
            run.setStrandClass(make);
            run.setLength(Length.valueOf(lengthOfEach));
        }
    }
}
