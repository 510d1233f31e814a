// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Evaluator;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.Block;
import garboard.report.Paper;
import garboard.report.Picture;
import garboard.report.PictureRow;
import garboard.report.Report;
import garboard.report.ReportOptions;
import garboard.report.Reports;
import garboard.report.Sheet;
import garboard.session.OpenRecord;

class ReportSourceTest {

    private static ReportSource source(OpenRecord open) {
        return ReportSource.of(open, "boat.garboard", UnitSystem.US, Paper.LETTER, Handed.CLOCK, "0.1");
    }

    /** What is the same in two reports; pictures are drawn by code and have no equality, and are told by their names and sizes. */
    private static List<Object> content(Report report) {
        return report.sheets().stream().<Object>map(ReportSourceTest::content).toList();
    }

    private static List<Object> content(Sheet sheet) {
        return Stream.concat(Stream.of(sheet.name(), sheet.heading(), sheet.orientation()),
            sheet.blocks().stream().map(ReportSourceTest::content)).toList();
    }

    private static Object content(Block block) {
        return switch (block) {
            case Picture picture -> picture.name() + picture.widthMm() + picture.heightMm() + picture.alternative();
            case PictureRow row -> row.photographs().stream().map(photo -> photo.caption() + photo.data().length).toList();
            default -> block;
        };
    }

    @ParameterizedTest
    @ValueSource(strings = { "motor-cruiser", "passenger-boat", "sailing-yacht" })
    void composesWhatTheConsoleComposes(String example) throws Exception {
        OpenRecord open = Handed.example(example);
        Report fromSession = source(open).compose();

        // As the command "report" does it, from the file.
        var file = Handed.content(example);
        var evaluation = new Evaluator(Handed.catalogue()).evaluate(file.record(), LocalDate.now(Handed.CLOCK));
        Report fromConsole = Reports.compose(file.record(), evaluation,
            new ReportOptions(UnitSystem.US, Paper.LETTER, ZonedDateTime.now(Handed.CLOCK), "0.1"));

        assertThat(content(fromSession)).isEqualTo(content(fromConsole));
        assertThat(fromSession.verdicts()).isEqualTo(fromConsole.verdicts());
        assertThat(fromSession.options()).isEqualTo(fromConsole.options());
        assertThat(source(open).bytes()).isEqualTo(file.toBytes());
    }

    @Test
    void staysAsItWasWhileTheRecordIsEditedOn() throws Exception {
        OpenRecord open = Handed.example("sailing-yacht");
        byte[] before = open.content().toBytes();
        ReportSource source = source(open);
        open.edits().set(Handed.field(open, "vessel.beam"), Length.valueOf("99 m"), "");
        open.edits().remove(List.copyOf(open.record().getRawWater().getHoses()), "");
        assertThat(source.bytes()).isEqualTo(before);
    }

    @Test
    void leavesTheRecordAsItIs() throws Exception {
        OpenRecord open = Handed.example("sailing-yacht");
        byte[] before = open.content().toBytes();
        ReportSource source = source(open);
        source.compose();
        source.bytes();
        assertThat(open.content().toBytes()).isEqualTo(before);
        assertThat(open.unsaved()).isFalse();
        assertThat(open.edits().canUndo()).isFalse();
    }
}
