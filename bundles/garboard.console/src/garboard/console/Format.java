// SPDX-License-Identifier: EPL-2.0
package garboard.console;

/** How a command answers. */
enum Format {
    TEXT, JSON, CSV;

    /** @throws CommandFailure when the command has no such format */
    static Format among(Format asked, Format... known) throws CommandFailure {
        for (Format format : known) {
            if (format == asked) {
                return format;
            }
        }
        throw new CommandFailure("This command has no format " + asked.name().toLowerCase(java.util.Locale.ROOT) + "; use "
                + String.join(" or ",
                        java.util.Arrays.stream(known).map(format -> format.name().toLowerCase(java.util.Locale.ROOT)).toList()));
    }
}
