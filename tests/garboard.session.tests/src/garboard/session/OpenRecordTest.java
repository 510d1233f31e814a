// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.io.RecordFile;
import garboard.quantity.Length;
import garboard.session.OpenRecord.Acceptor;
import garboard.session.verdicts.Judged;

class OpenRecordTest {

    private static final String SEAT = "rawWater.siphonBreak";

    @TempDir
    Path folder;

    private final OpenRecord made = Judged.made();

    @Test
    void appliesARemedyInOneStep() {
        Verdict high = Judged.verdict(made, "SEAT-HIGH", SEAT);
        made.apply(high.remedy().orElseThrow(), "Remedy of SEAT-HIGH");

        assertThat(made.field("rawWater.siphonBreak.ventSeat.z").orElseThrow().value()).contains(Length.of(300, "mm"));
        assertThat(made.edits().undoLabel()).contains("Remedy of SEAT-HIGH");
        made.edits().undo();
        assertThat(made.edits().canUndo()).isFalse();
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT)).isEqualTo(high);
    }

    @Test
    void acceptsAShortfallWithNameAndReasonAndTakesItBackByUndo() {
        accept("SEAT-HIGH", SEAT, "Ada Example", Optional.empty());

        Verdict accepted = Judged.verdict(made, "SEAT-HIGH", SEAT);
        assertThat(accepted.standing()).isEqualTo(Standing.ACCEPTED);
        assertThat(accepted.acceptance()).contains("Ada Example, 2026-06-01: Raised at the next haul-out");
        assertThat(accepted.sentence()).isEqualTo("the seat stands at 200 mm");
        made.edits().undo();
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.FALLS_SHORT);
    }

    @Test
    void recordsAnAcceptanceOfARegulationWithoutItsCounting() {
        accept("REMOTE-STOP", "alarms", "Ada Example", Optional.empty());

        Verdict law = Judged.verdict(made, "REMOTE-STOP", "alarms");
        assertThat(law.standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(law.acceptance().orElseThrow()).startsWith("Recorded, but a regulation cannot be accepted away. Ada Example");
        assertThat(made.acceptances(law)).hasSize(1);
    }

    @Test
    void putsAnAcceptanceInPlaceOfAnEarlierOneOfTheSameInOneStep() {
        accept("SEAT-HIGH", SEAT, "Ada Example", Optional.of(LocalDate.of(2026, 5, 1)));
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.FALLS_SHORT);
        accept("SEAT-HIGH", SEAT, "Bo Example", Optional.of(LocalDate.of(2027, 5, 1)));

        assertThat(made.record().getAcceptances()).singleElement().extracting("acceptedBy").isEqualTo("Bo Example");
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.ACCEPTED);
        made.edits().undo();
        assertThat(made.record().getAcceptances()).singleElement().extracting("acceptedBy").isEqualTo("Ada Example");
    }

    @Test
    void withdrawsAnAcceptanceAndLeavesThoseOfOtherPlaces() {
        accept("HOSE-CLAMPED", "rawWater.hoses[hose-1]", "Ada Example", Optional.empty());
        accept("SEAT-HIGH", SEAT, "Ada Example", Optional.empty());

        made.withdraw(Judged.verdict(made, "SEAT-HIGH", SEAT), "Withdraw");
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-1]").standing()).isEqualTo(Standing.ACCEPTED);
        made.edits().undo();
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.ACCEPTED);
    }

    @Test
    void isUnsavedUntilItIsSavedAndTellsSo() throws Exception {
        var saves = new ArrayList<OpenRecord>();
        OpenRecord fresh = OpenRecord.of(RecordFile.create(), Optional.empty(), Judged.allPractices(), Judged.CLOCK);
        fresh.onSaved(saves::add);
        assertThat(fresh.unsaved()).isFalse();
        fresh.edits().set(fresh.field("vessel.name").orElseThrow(), "Made-up Tern", "Name");
        assertThat(fresh.unsaved()).isTrue();

        fresh.save(folder.resolve("tern.garboard"));
        assertThat(fresh.unsaved()).isFalse();
        assertThat(fresh.file()).contains(folder.resolve("tern.garboard"));
        assertThat(saves).containsExactly(fresh);
    }

    @Test
    void keepsWhatCannotBeReadInTheFile() throws Exception {
        OpenRecord fresh = OpenRecord.of(RecordFile.create(), Optional.empty(), Judged.allPractices(), Judged.CLOCK);
        Field beam = fresh.field("vessel.beam").orElseThrow();
        fresh.edits().typing(beam, "Beam").leaveUnread("wide \"as a barn\" <&>");
        Path file = folder.resolve("unread.garboard");
        fresh.save(file);

        OpenRecord again = OpenRecord.of(RecordFile.open(file), Optional.of(file), Judged.allPractices(), Judged.CLOCK);
        assertThat(again.edits().unread(again.field("vessel.beam").orElseThrow())).contains("wide \"as a barn\" <&>");
        assertThat(again.field("vessel.beam").orElseThrow().value()).isEmpty();
    }

    @Test
    void givesAnIdToWhatIsAddedSoThatItsFieldsHaveKeys() {
        var hose = made.edits().add(made.record(), List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES),
            GarboardFactory.eINSTANCE.createWaterHoseRun(), "Hose");

        assertThat(hose.getId()).isEqualTo("hose-3");
        assertThat(made.field("rawWater.hoses[hose-3].bore")).isPresent();
    }

    @Test
    void countsAsUnsavedWhenItWasFoundAfterACrash() throws Exception {
        OpenRecord found = OpenRecord.recovered(RecordFile.create(), Optional.empty(), Judged.allPractices(), Judged.CLOCK);
        assertThat(found.unsaved()).isTrue();
        found.save(folder.resolve("found.garboard"));
        assertThat(found.unsaved()).isFalse();
    }

    private void accept(String check, String subject, String name, Optional<LocalDate> until) {
        made.accept(Judged.verdict(made, check, subject), new Acceptor(name, "Raised at the next haul-out", Judged.DAY, until), "Accept " + check);
    }
}
