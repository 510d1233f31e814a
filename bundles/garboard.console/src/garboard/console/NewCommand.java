// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import garboard.examples.Example;
import garboard.examples.Examples;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code new}: starts a record. */
@Command(name = "new", description = { "Starts a record: empty, or as a copy of an example.", "" }, footer = { "",
    "Example: garboard new --output boat.garboard", "         garboard new --example motor-cruiser --output try.garboard",
    "'garboard new --examples' lists the examples; all of them are made up." })
final class NewCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Option(names = "--output", paramLabel = "RECORD", description = "The file to write (.garboard). An existing file is never replaced.")
    private Path output;

    @Option(names = "--title", paramLabel = "TITLE", description = "What the record is called.")
    private String title;

    @Option(names = "--example", paramLabel = "NAME", description = "Start from this example.")
    private String example;

    @Option(names = "--examples", description = "List the examples.")
    private boolean list;

    private final Terminal terminal;

    NewCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws CommandFailure {
        if (list) {
            Examples.all().forEach(known -> terminal.out().println(known.name() + "  " + known.title()));
            return ExitCode.NOTHING_FALLS_SHORT;
        }
        if (output == null) {
            throw new CommandFailure("Say where to write the record: --output boat" + RecordFile.ENDING);
        }
        Path file = terminal.resolve(output);
        if (Files.exists(file)) {
            throw new CommandFailure(output + " exists already; name another file, or move that one away");
        }
        RecordFile record = example == null ? RecordFile.create() : copyOf(example);
        if (example == null) {
            record.record().setCreatedOn(terminal.today());
        }
        if (title != null) {
            record.record().setTitle(title);
        }
        RecordOutput.save(record, file);
        terminal.out().println("Wrote " + output + ". Next: garboard form --from " + output + " --output "
            + RecordInput.stem(output) + "-form.xlsx");
        return ExitCode.NOTHING_FALLS_SHORT;
    }

    private static RecordFile copyOf(String name) throws CommandFailure {
        Example chosen = Examples.find(name).orElseThrow(() -> new CommandFailure("There is no example \"" + name + "\"; there are "
            + String.join(", ", Examples.all().stream().map(Example::name).toList())));
        try (var in = chosen.open()) {
            return RecordFile.read(in, chosen.name());
        } catch (RecordReadException | java.io.IOException damaged) {
            throw new CommandFailure("The example " + name + " cannot be read: " + damaged.getMessage(), damaged);
        }
    }
}
