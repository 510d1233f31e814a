// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;

/** Siphon breaks for tests, with nothing entered beyond what is named. */
final class SiphonFixture {

    private SiphonFixture() {
    }

    static SiphonBreak siphonBreak(CommissioningRecord record) {
        return record.getRawWater().getSiphonBreak();
    }

    static CommissioningRecord fitted(CommissioningRecord record, SiphonBreakKind kind) {
        siphonBreak(record).setKind(kind);
        return record;
    }

    static CommissioningRecord fitted(SiphonBreakKind kind) {
        return fitted(Installation.empty(), kind);
    }

    /** A loop with a valve. */
    static CommissioningRecord loop() {
        return fitted(SiphonBreakKind.VALVED_VENTED_LOOP);
    }

    /** A loop with a valve whose vent hose ends there. */
    static CommissioningRecord loopWithHose(VentHoseEnd end) {
        CommissioningRecord record = loop();
        siphonBreak(record).setVentHose(end);
        return record;
    }

    /** A loop with a valve at a place on a boat. */
    static CommissioningRecord loopAt(CommissioningRecord boat, String x, String y, String z) {
        Boat.place(siphonBreak(fitted(boat, SiphonBreakKind.VALVED_VENTED_LOOP)).getVentSeat(), x, y, z);
        return boat;
    }

    /** A raw-water line without a siphon break, with its injection at a place on a boat. */
    static CommissioningRecord noBreakInjectionAt(CommissioningRecord boat, String x, String y, String z) {
        Boat.place(fitted(boat, SiphonBreakKind.NONE).getRawWater().getInjection(), x, y, z);
        return boat;
    }
}
