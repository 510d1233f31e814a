// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.model.io.RecordFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: holds a record against practice and says what falls short. */
@Command(name = "check", description = {
        "Holds a record against practice and says, worst first, what falls short and the way out.", "" }, footer = { "",
                "Example: garboard check boat.garboard --format json",
                "Exit code: 0 nothing falls short, 1 something does, 2 cannot read, 3 a check itself broke.",
                "'cannot tell' means that something is not entered; it is never a pass." })
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "RECORD", description = "A record (.garboard), or a report workbook (.xlsx) that holds one.")
    private Path file;

    @Option(names = "--format", paramLabel = "text|json", defaultValue = "TEXT", description = "How to answer; text by default.")
    private Format format;

    @Option(names = "--day", paramLabel = "DATE", description = "Judge service intervals and expiry dates as on this day, for example 2026-05-31; today by default.")
    private LocalDate day;

    @Option(names = "--all", description = "In text, list the checks that meet or do not apply too.")
    private boolean all;

    private final Terminal terminal;
    private final Supplier<Catalogue> catalogue;

    CheckCommand(Terminal terminal, Supplier<Catalogue> catalogue) {
        this.terminal = terminal;
        this.catalogue = catalogue;
    }

    @Override
    public Integer call() throws CommandFailure {
        Format answer = Format.among(format, Format.TEXT, Format.JSON);
        RecordFile record = RecordInput.open(terminal, file);
        Catalogue known = catalogue.get();
        Evaluation evaluation = new Evaluator(known).evaluate(record.record(), day == null ? terminal.today() : day);
        if (answer == Format.JSON) {
            new VerdictJson(terminal.out()).write(record.record(), evaluation, known);
        } else {
            new VerdictText(terminal.out(), all).write(record.record(), evaluation);
        }
        return ExitCode.of(evaluation);
    }
}
