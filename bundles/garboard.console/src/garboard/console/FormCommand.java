// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.quantity.UnitSystem;
import garboard.report.excel.form.FormWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code form}: the workbook that is taken on board. */
@Command(name = "form", description = { "Writes a workbook to fill in on board: a sheet for each system in walking order, what to measure",
    "and with what, a unit beside each value, choices as lists.", "" }, footer = { "",
        "Example: garboard form --from boat.garboard --output boat-form.xlsx",
        "Bring it back with: garboard read boat-form.xlsx --output boat.garboard" })
final class FormCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Option(names = "--from", paramLabel = "RECORD", description = "Fill in what this record holds already.")
    private Path from;

    @Option(names = "--output", paramLabel = "FORM.xlsx", required = true, description = "The workbook to write.")
    private Path output;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "SI", description = "Units offered for empty fields; any unit may be written in.")
    private UnitSystem units;

    private final Terminal terminal;

    FormCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws CommandFailure {
        if (!RecordInput.isWorkbook(output)) {
            throw new CommandFailure("The form is an Excel workbook; let the name end with .xlsx, not as in " + output);
        }
        RecordFile base = from == null ? RecordFile.create() : RecordInput.open(terminal, from);
        RecordOutput.write(terminal.resolve(output), out -> {
            try {
                new FormWriter(units).write(base, out);
            } catch (RecordWriteException failed) {
                throw new IOException(failed.getMessage(), failed);
            }
        });
        terminal.out().println("Wrote " + output + ". Fill it in, then: garboard read " + output + " --output "
            + (from == null ? "boat" + RecordFile.ENDING : from));
        return ExitCode.NOTHING_FALLS_SHORT;
    }
}
