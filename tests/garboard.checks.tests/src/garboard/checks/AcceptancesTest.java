// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import garboard.model.Acceptance;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;

class AcceptancesTest {

    private static final String SEAT = "rawWater.siphonBreak";

    private final CommissioningRecord record = Samples.seatAt("200 mm");

    @Test
    void oneThatRanOutDoesNotStandInTheWayOfOneThatCounts() {
        accept(SEAT, "Ada Example", Samples.DAY.minusDays(1));
        accept(SEAT, "Bo Example", Samples.DAY.plusYears(1));

        assertThat(verdict().standing()).isEqualTo(Standing.ACCEPTED);
        assertThat(verdict().acceptance().orElseThrow()).startsWith("Bo Example");
    }

    @Test
    void whenNoneCountsTheLastSaysWhy() {
        accept(SEAT, "Ada Example", Samples.DAY.minusDays(2));
        accept(SEAT, "Bo Example", Samples.DAY.minusDays(1));

        assertThat(verdict().standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(verdict().acceptance().orElseThrow()).startsWith("The acceptance has run out. Bo Example");
    }

    @Test
    void oneOfAnotherPlaceChangesNothing() {
        accept("rawWater.pump", "Ada Example", Samples.DAY.plusYears(1));

        assertThat(verdict().standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(verdict().acceptance()).isEmpty();
    }

    @Test
    void theDayUntilWhichItHoldsStillCounts() {
        accept(SEAT, "Ada Example", Samples.DAY);

        assertThat(verdict().standing()).isEqualTo(Standing.ACCEPTED);
    }

    private void accept(String subject, String name, LocalDate until) {
        Acceptance acceptance = GarboardFactory.eINSTANCE.createAcceptance();
        acceptance.setCheck("SAMPLE-HEIGHT");
        acceptance.setSubject(subject);
        acceptance.setAcceptedBy(name);
        acceptance.setReason("The seat is raised at the next haul-out");
        acceptance.setUntil(until);
        record.getAcceptances().add(acceptance);
    }

    private Verdict verdict() {
        return new Evaluator(Catalogue.of(Samples.practice("sample", Samples.height().build()))).evaluate(record, Samples.DAY).verdicts().getFirst();
    }
}
