// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import picocli.CommandLine.Option;

/** Options that every command has. */
final class CommonOptions {

    @Option(names = { "-h", "--help" }, usageHelp = true, description = "Show this help.")
    private boolean help;
}
