// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What stands above the commands. */
@Command(name = "garboard", synopsisSubcommandLabel = "COMMAND", customSynopsis = "garboard COMMAND [OPTIONS] [FILES]", description = {
        "Checks the installation of a small marine generator set against practice and writes its commissioning record.", "" }, footer = {
                "", "A first walk:", //
                "  garboard new --output boat.garboard            start a record", //
                "  garboard form --from boat.garboard --output boat-form.xlsx",
                "                                                 take this form on board and fill it in",
                "  garboard read boat-form.xlsx --output boat.garboard",
                "                                                 bring the filled form back into the record",
                "  garboard check boat.garboard                   see what falls short, and the way out",
                "  garboard report boat.garboard                  write the commissioning report (Excel)", "",
                "Exit code: 0 nothing falls short, 1 something does, 2 cannot read or wrong usage, 3 a check itself broke.", "",
                "Garboard compares what was measured with stated practice. It certifies nothing; local codes and licensed trades decide." })
final class TopCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Option(names = { "-h", "--help" }, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do");
    }

}
