// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.Supplier;

import garboard.checks.Catalogue;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/**
 * The console: finds the command, parses its arguments, runs it and turns whatever goes wrong into one sentence and an exit
 * code. Only the command that was asked for is set up, which keeps the start short.
 */
public final class Console {

    private static final int HELP_WIDTH = 100;

    private final Terminal terminal;
    private final Supplier<Catalogue> catalogue;

    /** @param catalogue made only by commands that need it */
    Console(Terminal terminal, Supplier<Catalogue> catalogue) {
        this.terminal = terminal;
        this.catalogue = catalogue;
    }

    /** Runs one command line. */
    int run(String... arguments) {
        if (arguments.length == 0) {
            terminal.err().println("garboard: say what to do; 'garboard --help' lists the commands.");
            return ExitCode.CANNOT_READ;
        }
        CommandLine commandLine = commandLine(arguments[0]);
        commandLine.setOut(new java.io.PrintWriter(terminal.out(), true));
        commandLine.setErr(new java.io.PrintWriter(terminal.err(), true));
        commandLine.setCaseInsensitiveEnumValuesAllowed(true);
        commandLine.setUsageHelpWidth(HELP_WIDTH);
        commandLine.registerConverter(LocalDate.class, Console::date);
        commandLine.setParameterExceptionHandler(wrongUsage());
        commandLine.setExecutionExceptionHandler(failure());
        return commandLine.execute(arguments);
    }

    private CommandLine commandLine(String first) {
        var top = new CommandLine(new TopCommand());
        List<String> wanted = CommandName.isName(first) ? List.of(first) : CommandName.all();
        wanted.forEach(name -> top.addSubcommand(name, CommandName.of(name).create(terminal, catalogue)));
        return top;
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException noDate) {
            throw new TypeConversionException("'" + text + "' is no date; right would be year-month-day, for example 2026-05-31");
        }
    }

    private static IParameterExceptionHandler wrongUsage() {
        return (exception, arguments) -> {
            CommandLine command = exception.getCommandLine();
            command.getErr().println("garboard: " + sentence(exception.getMessage()) + " Try '"
                    + command.getCommandSpec().qualifiedName() + " --help'.");
            return ExitCode.CANNOT_READ;
        };
    }

    private IExecutionExceptionHandler failure() {
        return (Exception exception, CommandLine command, ParseResult parsed) -> {
            if (exception instanceof CommandFailure) {
                terminal.err().println("garboard: " + sentence(exception.getMessage()));
                return ExitCode.CANNOT_READ;
            }
            terminal.err().println("garboard: the program itself failed, which is our fault, not yours: " + exception
                    + at(exception) + ". Nothing was written.");
            return ExitCode.CHECK_BROKE;
        };
    }

    /** Where it failed, so that a report of the fault is of use without a page of stack trace. */
    private static String at(Exception exception) {
        StackTraceElement[] trace = exception.getStackTrace();
        return trace.length == 0 ? "" : " at " + trace[0];
    }

    private static String sentence(String message) {
        String text = message == null ? "unknown fault" : message.strip().replaceAll("\\s*\\R\\s*", " ");
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }
}
