// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.quantity.UnitSystem;
import garboard.report.Paper;
import garboard.report.Report;
import garboard.report.ReportOptions;
import garboard.report.Reports;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.WorkbookWriteException;
import garboard.report.excel.WorkbookWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code report}: the commissioning and sea-trial report. */
@Command(name = "report", description = { "Checks a record and writes the commissioning and sea-trial report as an Excel workbook.",
    "The workbook carries the record inside: 'garboard read' takes it out again.", "" }, footer = { "",
        "Example: garboard report boat.garboard --paper letter --units us",
        "Exit code: 0 nothing falls short, 1 something does (the report is written all the same), 2 cannot read or write, 3 a check itself broke." })
final class ReportCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "RECORD", description = "A record (.garboard), or a report workbook (.xlsx) that holds one.")
    private Path file;

    @Option(names = "--output", paramLabel = "FILE.xlsx", description = "The workbook to write; the record's name with .xlsx in this folder by default.")
    private Path output;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "A4", description = "Paper to lay out for; A4 by default.")
    private Paper paper;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "SI", description = "Units for what is computed; what was entered keeps its own.")
    private UnitSystem units;

    private final Terminal terminal;
    private final Supplier<Catalogue> catalogue;

    ReportCommand(Terminal terminal, Supplier<Catalogue> catalogue) {
        this.terminal = terminal;
        this.catalogue = catalogue;
    }

    @Override
    public Integer call() throws CommandFailure {
        Path named = output == null ? Path.of(RecordInput.stem(file) + ".xlsx") : output;
        Path target = terminal.resolve(named);
        if (!RecordInput.isWorkbook(target)) {
            throw new CommandFailure("The report is an Excel workbook; let the name end with .xlsx, not as in " + named);
        }
        if (target.equals(terminal.resolve(file))) {
            throw new CommandFailure("The report would replace the workbook that it is made from; name another with --output");
        }
        RecordFile record = RecordInput.open(terminal, file);
        Evaluation evaluation = new Evaluator(catalogue.get()).evaluate(record.record(), terminal.today());
        Report report = Reports.compose(record.record(), evaluation,
            new ReportOptions(units, paper, ZonedDateTime.now(terminal.clock()), Version.ofProgram()));
        write(report, record, target);
        terminal.out().println(Headings.of(record.record()));
        terminal.out().println(Outcome.counts(evaluation));
        terminal.out().println(Outcome.sentence(evaluation));
        terminal.out().println("Wrote " + named + ". What falls short, and the way out: sheet Shortfalls, or garboard check " + file);
        terminal.out().println(Outcome.CERTIFIES_NOTHING);
        return ExitCode.of(evaluation);
    }

    private void write(Report report, RecordFile record, Path target) throws CommandFailure {
        try {
            var embedded = new EmbeddedRecord(RecordInput.stem(file) + RecordFile.ENDING, record.toBytes());
            new WorkbookWriter().write(report, embedded, target, new ProgressLine(terminal.err()));
        } catch (RecordWriteException | WorkbookWriteException failed) {
            throw new CommandFailure(failed.getMessage(), failed);
        }
    }
}
