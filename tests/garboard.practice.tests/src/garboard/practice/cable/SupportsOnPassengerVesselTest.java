// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.quantity.Length;

class SupportsOnPassengerVesselTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    @ParameterizedTest
    @CsvSource({ "610 mm, MEETS", "24 in, MEETS", "620 mm, FALLS_SHORT", "25 in, FALLS_SHORT" }) // 46 CFR 183.340(b)(4): 610 mm (24 in)
    void heldAtCloseIntervals(String spacing, Standing standing) {
        run.setSupportSpacing(Length.valueOf(spacing));
        judge(SupportsOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void remedyAddsSupports() {
        run.setSupportSpacing(Length.of(1, "m"));
        judge(SupportsOnPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheSpacing() {
        judge(SupportsOnPassengerVessel.check(), record).cannotTell("startingBattery.cables[0].supportSpacing");
    }

    @Test
    void doesNotApplyToYachts() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(SupportsOnPassengerVessel.check(), record).doesNotApply();
    }
}
