// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

/** Batteries to judge: nothing is entered but the size and the kind. */
final class Bench {

    private Bench() {
    }

    /** One 12 V block. */
    static CommissioningRecord of(BatteryChemistry chemistry) {
        CommissioningRecord record = Installation.empty();
        StartingBattery battery = record.getStartingBattery();
        battery.setChemistry(chemistry);
        battery.setBlockVoltage(Voltage.of(12, "V"));
        battery.setBlocksInSeries(1);
        battery.setStringsInParallel(1);
        return record;
    }

    /** Two 12 V blocks in series. */
    static CommissioningRecord of24V(BatteryChemistry chemistry) {
        CommissioningRecord record = of(chemistry);
        record.getStartingBattery().setBlocksInSeries(2);
        return record;
    }

    static CommissioningRecord flooded() {
        return of(BatteryChemistry.FLOODED_LEAD_ACID);
    }
}
