// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.report.excel.WorkbookReadException;
import garboard.report.excel.form.FormReadException;
import garboard.report.excel.form.FormReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code read}: takes a filled form or a report back. */
@Command(name = "read", description = { "Takes a filled form, or the record inside a report workbook, back into a record.",
    "With a single wrong entry nothing is written; every wrong entry is named by sheet and cell.", "" }, footer = { "",
        "Example: garboard read boat-form.xlsx --output boat.garboard" })
final class ReadCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "WORKBOOK", description = "A filled form or a report (.xlsx).")
    private Path workbook;

    @Option(names = "--output", paramLabel = "RECORD", required = true, description = "The record to write (.garboard); an older one of that name is kept beside it with the ending .bak.")
    private Path output;

    private final Terminal terminal;

    ReadCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws CommandFailure {
        Path file = terminal.resolve(workbook);
        if (Files.notExists(file)) {
            throw new CommandFailure("There is no file " + workbook);
        }
        RecordFile record = read(file);
        Path target = terminal.resolve(output);
        keepOlder(target);
        RecordOutput.save(record, target);
        terminal.out().println("Wrote " + output + ". Next: garboard check " + output);
        return ExitCode.NOTHING_FALLS_SHORT;
    }

    private RecordFile read(Path file) throws CommandFailure {
        var forms = new FormReader();
        try {
            return forms.isForm(file) ? forms.read(file) : RecordInput.fromWorkbook(file);
        } catch (FormReadException wrong) {
            wrong.mistakes().forEach(mistake -> terminal.err().println("  " + mistake));
            throw new CommandFailure(wrong.mistakes().isEmpty() ? wrong.getMessage() : wrong.getMessage() + " Nothing was written", wrong);
        } catch (RecordReadException | WorkbookReadException wrong) {
            throw new CommandFailure(wrong.getMessage(), wrong);
        }
    }

    /** What a person had is not lost when a form from another day is read over it. */
    private void keepOlder(Path target) throws CommandFailure {
        if (Files.isRegularFile(target)) {
            Path kept = target.resolveSibling(target.getFileName() + ".bak");
            RecordOutput.write(kept, out -> Files.copy(target, out));
            terminal.err().println("garboard: the older " + output + " is kept as " + kept.getFileName());
        }
    }
}
