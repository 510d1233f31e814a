// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.model.Labels;
import garboard.quantity.UnitSystem;
import garboard.session.OpenRecord.Acceptor;
import garboard.session.entry.EntryReader;
import garboard.session.verdicts.AcceptanceDraft.Fault;

class AcceptanceDraftTest {

    private final EntryReader reader = new EntryReader(UnitSystem.SI, Labels.in(Locale.ENGLISH), Judged.CLOCK);

    @Test
    void takesNameAndReasonWithoutBlanksAroundThem() {
        assertThat(draft(" Ada Example ", "Raised at the next haul-out\n", "").acceptor(reader))
            .isEqualTo(new Acceptor("Ada Example", "Raised at the next haul-out", Judged.DAY, Optional.empty()));
    }

    @Test
    void takesTheLastDayOnWhichItCounts() {
        assertThat(draft("Ada Example", "Later", "31.5.2027").acceptor(reader).until()).contains(LocalDate.of(2027, 5, 31));
        assertThat(draft("Ada Example", "Later", "2026-06-01").faults(reader)).isEmpty();
    }

    @Test
    void refusesWhatAnAcceptanceDoesNotCountWithout() {
        assertThat(draft(" ", "\t", "").faults(reader)).containsExactly(Fault.NO_NAME, Fault.NO_REASON);
        assertThat(draft("Ada Example", "Later", "soon").faults(reader)).containsExactly(Fault.UNTIL_UNREADABLE);
        assertThat(draft("Ada Example", "Later", "2026-").faults(reader)).containsExactly(Fault.UNTIL_UNREADABLE);
        assertThat(draft("Ada Example", "Later", "2026-05-31").faults(reader)).containsExactly(Fault.UNTIL_PAST);
        assertThatThrownBy(() -> draft("", "Later", "").acceptor(reader)).hasMessageContaining("NO_NAME");
    }

    private static AcceptanceDraft draft(String name, String reason, String until) {
        return new AcceptanceDraft(name, reason, until, Judged.DAY);
    }
}
