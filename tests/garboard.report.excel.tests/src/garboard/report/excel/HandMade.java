// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;

import garboard.checks.Standing;
import garboard.quantity.UnitSystem;
import garboard.report.Block;
import garboard.report.Cell;
import garboard.report.Chart;
import garboard.report.ChartRow;
import garboard.report.Expression;
import garboard.report.Orientation;
import garboard.report.Paper;
import garboard.report.Picture;
import garboard.report.Report;
import garboard.report.ReportOptions;
import garboard.report.Sheet;
import garboard.report.Table;
import garboard.report.VerdictOfTheDay;

/** Reports made by hand, with everything that a report can hold. */
final class HandMade {

    static final EmbeddedRecord RECORD =
        new EmbeddedRecord("boat & co.garboard", "<record name=\"Möwe\"/>\r\n\u0000 and bytes".getBytes(StandardCharsets.UTF_8));
    static final List<VerdictOfTheDay> VERDICTS = List.of(
        new VerdictOfTheDay("SEAT-HEIGHT", "rawWater.siphonBreak", "falls short", "420 mm", "500 mm", "-0.08 m", "Less <than> \"asked\" & so"),
        new VerdictOfTheDay("SEACOCK-KIND", "rawWater.seacock", "meets", "", "", "", "Flanged"));

    private HandMade() {
    }

    static Report of(Sheet... sheets) {
        return of(Paper.A4, sheets);
    }

    static Report of(Paper paper, Sheet... sheets) {
        var options = new ReportOptions(UnitSystem.SI, paper, ZonedDateTime.of(2031, 5, 4, 16, 20, 0, 0, ZoneOffset.UTC), "0.1.0");
        return new Report("Commissioning record", "GB-1 & A", "Petrel", List.of(sheets), VERDICTS, options);
    }

    static Sheet upright(String name, Block... blocks) {
        return new Sheet(name, name + " heading", Orientation.PORTRAIT, List.of(blocks));
    }

    static Report everything() {
        return of(
            upright("First", Block.body("A paragraph"), new Block.Heading("Pairs"), new Block.KeyValues(List.of(Block.Entry.of("Vessel", "Petrel"),
                Block.Entry.of("Owner", "=cmd|' /C calc'!A0"), new Block.Entry("Day", new Cell.Day(LocalDate.of(2031, 5, 4))))),
                new Block.Paragraph("Outcome", Block.Style.OUTCOME), loads(),
                new Block.SignatureLines("It certifies nothing.", List.of(new Block.Signatory("Owner", "", "", "I agree.")))),
            upright("Margins", margins()), upright("Plan", plan()),
            new Sheet("Picture", "Picture", Orientation.LANDSCAPE,
                List.of(new Picture("Line", 200, 120, graphics -> graphics.drawLine(0, 0, 200, 120), "a line"), new Block.PageBreak(), readings(),
                    new ChartRow(List.of(new Chart("Frequency", 2, 0, "Load, %", List.of(new Chart.Series("Frequency", 1, false)), "Hz"))))));
    }

    static Table margins() {
        Expression margin = Expression.column("measured").minus(Expression.column("limit"));
        Expression upper = Expression.column("limit").minus(Expression.column("measured"));
        Expression perCent = Expression.column("margin").over(Expression.column("limit").absolute()).times(Expression.constant(100));
        return Table.of(Table.standing(30), Table.text("title", "Title", 60), Table.number("measured", "Measured", 25), Table.number("limit", "Limit", 25),
            Table.unit("unit", 12), Table.number("margin", "Margin", 15), Table.number("perCent", "Margin %", 15)).repeated().group("Raw water")
            .row(new Cell.Stands(Standing.FALLS_SHORT), Cell.text("Seat"), new Cell.Number(420.25, 0), new Cell.Number(500, 0), Cell.text("mm"),
                new Cell.Computed(margin, 0, true), new Cell.Computed(perCent, 0, true))
            .row(new Cell.Stands(Standing.MEETS), Cell.text("Pressure"), new Cell.Number(9.5, 2), new Cell.Number(-10.159, 2), Cell.text("kPa"),
                new Cell.Computed(upper, 2, true), new Cell.Computed(perCent, 0, true))
            .row(new Cell.Stands(Standing.CANNOT_TELL), Cell.text("Nothing"), Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK).build();
    }

    static Table loads() {
        Expression reactive = Expression.column("p").times(new Expression.TangentOfArcCosine(Expression.column("pf")));
        Expression apparent = new Expression.Hypotenuse(Expression.column("p"), Expression.column("q"));
        return Table.of(Table.text("load", "Load", 62), Table.number("p", "kW", 40), Table.number("pf", "Power factor", 40), Table.number("q", "kvar", 40))
            .row(Cell.text("Charger"), new Cell.Number(1.304348, 2), new Cell.Number(0.95, 2), new Cell.Computed(reactive, 2, false))
            .row(Cell.text("Motor"), new Cell.Number(1.41, 2), new Cell.Number(0.82, 2), new Cell.Computed(reactive, 2, false))
            .total(Map.of("load", Cell.strong("All"), "p", new Cell.Computed(Expression.total("p"), 2, false), "q",
                new Cell.Computed(Expression.total("q"), 2, false), "pf", new Cell.Computed(apparent, 2, false)))
            .row(Cell.text("Heater"), new Cell.Number(2, 2), new Cell.Number(1, 2), new Cell.Computed(reactive, 2, false))
            .total(Map.of("load", Cell.strong("With the heater"), "p", new Cell.Computed(Expression.total("p"), 2, false), "q",
                new Cell.Computed(Expression.total("p").over(Expression.constant(6.5)).plus(Expression.total("q").absolute()), 2, false)))
            .build();
    }

    static Table plan() {
        return Table.of(Table.text("task", "Task", 80), Table.number("months", "Every months", 30), Table.day("last", "Last", 36),
            Table.day("due", "Due", 36))
            .row(Cell.text("Impeller"), Cell.count(13), new Cell.Day(LocalDate.of(2031, 1, 31)), new Cell.DayAfter("last", "months"))
            .row(Cell.text("Oil"), Cell.BLANK, Cell.BLANK, new Cell.DayAfter("last", "months")).build();
    }

    private static Table readings() {
        return Table.of(Table.text("reading", "Reading", 60), Table.number("r0", "09:40", 30), Table.number("r1", "10:15", 30))
            .row(Cell.text("Load"), new Cell.Number(0, 0), new Cell.Number(100, 0))
            .row(Cell.text("Frequency"), new Cell.Number(52.1, 1), new Cell.Number(49.9, 1)).build();
    }
}
