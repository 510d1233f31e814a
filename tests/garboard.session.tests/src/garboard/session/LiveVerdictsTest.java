// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.model.io.RecordFile;
import garboard.practice.HandbookPractice;
import garboard.session.OpenRecord.Acceptor;
import garboard.session.verdicts.Judged;

class LiveVerdictsTest {

    private static final String SEAT = "rawWater.siphonBreak";

    @Test
    void tellNothingOfTextThatCannotBeRead() {
        OpenRecord made = Judged.made();
        var told = new ArrayList<Evaluation>();
        made.verdicts().onChange(told::add);

        made.edits().typing(made.field("vessel.flag").orElseThrow(), "Flag").leaveUnread("?");
        assertThat(told).isEmpty();
        made.edits().typing(made.field("rawWater.siphonBreak.ventSeat.z").orElseThrow(), "z").leaveUnread("high");
        assertThat(told).singleElement().satisfies(now -> assertThat(now.count(Standing.CANNOT_TELL)).isEqualTo(3));
    }

    @Test
    void leaveAloneTheVerdictsThatAnEditDoesNotTouch() {
        OpenRecord made = Judged.made();
        var hose = Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-1]");
        var seat = Judged.verdict(made, "SEAT-HIGH", SEAT);
        made.edits().clear(made.field("rawWater.siphonBreak.ventSeat.z").orElseThrow(), "z");

        assertThat(Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-1]")).isSameAs(hose);
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT)).isNotSameAs(seat);
    }

    @Test
    void followTheChoiceOfPractices() {
        OpenRecord record = OpenRecord.of(RecordFile.create(), Optional.empty(), Judged.allPractices(), Judged.CLOCK);
        int all = record.verdicts().evaluation().verdicts().size();
        String handbook = new HandbookPractice().id();
        record.edits().set(record.field("practices").orElseThrow(), List.of(handbook, "of-another-yard"), "Practices");

        assertThat(record.verdicts().evaluation().verdicts()).hasSize(new HandbookPractice().checks().size()).hasSizeLessThan(all);
        assertThat(record.verdicts().evaluation().practicesNotAtHand()).containsExactly("of-another-yard");
        record.edits().undo();
        assertThat(record.verdicts().evaluation().verdicts()).hasSize(all);
    }

    /** A window that stays open over midnight: an acceptance that held yesterday does not hold today. */
    @Test
    void areAllJudgedAnewOnANewDay() {
        var clock = new Days();
        OpenRecord made = OpenRecord.of(Judged.made().content(), Optional.empty(), Judged.made().verdicts().catalogue(), clock);
        made.accept(Judged.verdict(made, "SEAT-HIGH", SEAT), new Acceptor("Ada Example", "Until tonight", Judged.DAY, Optional.of(Judged.DAY)), "Accept");
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.ACCEPTED);

        clock.day = Judged.DAY.plusDays(1);
        made.edits().set(made.field("vessel.flag").orElseThrow(), "Nowhere", "Flag");
        made.edits().set(made.field("vessel.flag").orElseThrow(), "Elsewhere", "Flag");
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(made.verdicts().evaluation().day()).isEqualTo(Judged.DAY.plusDays(1));
    }

    private static final class Days extends Clock {
        private LocalDate day = Judged.DAY;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return day.atStartOfDay(ZoneOffset.UTC).toInstant();
        }
    }
}
