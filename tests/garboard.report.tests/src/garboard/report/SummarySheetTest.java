// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.model.GarboardFactory;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;

class SummarySheetTest {

    private final Report report = Sheets.sample();

    @Test
    void tellsTheOutcomeInOneSentence() {
        assertThat(Sheets.words(report, "Summary")).contains("Falls short of practice: 1 check is not met, a danger to people; 1 is borderline, "
            + "1 cannot tell because something is not entered and 1 shortfall was accepted by a person. "
            + "1 check could not be carried out through a fault of the program.");
    }

    @Test
    void countsByStandingAndGravityWithLiveTotals() {
        Table counts = Sheets.tables(report, "Summary").getFirst();
        assertThat(Sheets.number(counts, Sheets.row(counts, "falls short"), "Danger to people")).isEqualTo(1);
        assertThat(Sheets.number(counts, Sheets.row(counts, "meets"), "All")).isEqualTo(2);
        int all = Sheets.row(counts, "All checks");
        assertThat(Sheets.number(counts, all, "All")).isEqualTo(8);
        assertThat(Sheets.number(counts, all, "Danger to people")).isEqualTo(4);
        assertThat(Sheets.cell(counts, all, "All")).isInstanceOf(Cell.Computed.class);
    }

    @Test
    void namesTheGravestWithItsRemedy() {
        assertThat(Sheets.words(report, "Summary")).contains("The vent seat stands 420 mm above the loaded waterline (SEAT-HEIGHT)")
            .contains("Raise the vent seat by 80 mm.");
    }

    @Test
    void saysThatItCertifiesNothingAndThatLocalCodesDecide() {
        assertThat(Sheets.words(report, "Summary")).contains("certifies nothing").contains("Local codes");
    }

    @Test
    void leavesLinesForThoseWhoHaveNotSigned() {
        var lines = (Block.SignatureLines) report.sheet("Summary").orElseThrow().blocks().getLast();
        assertThat(lines.signatories()).extracting(Block.Signatory::name).containsExactly("Ada Lindqvist, E-1182", "", "");
        assertThat(lines.signatories().getFirst().placeAndDate()).isEqualTo("Berth 14, 2031-05-03");
    }

    @Test
    void namesPracticesThatAreNotAtHand() {
        var record = SampleRecord.make();
        record.getPractices().add("from-elsewhere");
        Evaluation evaluation = new Evaluator(Catalogue.of(new SamplePractice())).evaluate(record, LocalDate.of(2031, 5, 4));
        assertThat(Sheets.words(Reports.compose(record, evaluation, Sheets.options(UnitSystem.SI)), "Summary")).contains("from-elsewhere");
    }

    @Test
    void composesARecordWithNothingInIt() {
        var record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        Report empty = Reports.compose(record, new Evaluation(List.of(), List.of(), LocalDate.of(2031, 5, 4)), Sheets.options(UnitSystem.SI));
        assertThat(empty.sheets()).extracting(Sheet::name).containsExactly("Summary", "Cautions", "Record");
        assertThat(Sheets.words(empty, "Summary")).contains("Nothing was checked.").contains("Vessel: not entered");
    }

    @Test
    void sheetsComeInTheOrderOfReading() {
        assertThat(report.sheets()).extracting(Sheet::name).containsExactly("Summary", "Cautions", "Particulars", "Checks", "Shortfalls",
            "Not applicable", "Drawings", "Trial", "Readings", "Load analysis", "Start card", "Upkeep", "Instruments", "Record");
    }

    @Test
    void keepsTheVerdictsOfTheDayExactly() {
        assertThat(report.verdicts()).hasSize(8);
        VerdictOfTheDay seat = report.verdicts().getFirst();
        assertThat(seat).isEqualTo(new VerdictOfTheDay("SEAT-HEIGHT", "rawWater.siphonBreak", "falls short", "420 mm", "500 mm", seat.margin(),
            "The vent seat stands 420 mm above the loaded waterline"));
        assertThat(Length.valueOf(seat.margin()).si()).isCloseTo(-0.08, offset(1e-12));
    }
}
