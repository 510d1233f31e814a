// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

import garboard.checks.Catalogue;
import garboard.practice.FederalGasolineCraft;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.practice.SmallPassengerVessels;

/**
 * One run of the console in a folder, as a person would see it.
 *
 * @param exit the exit code
 * @param out what went to the standard output
 * @param err what went to the standard error
 */
record ConsoleRun(int exit, String out, String err) {

    static final Instant NOW = Instant.parse("2026-06-01T10:00:00Z");

    static ConsoleRun in(Path folder, String... arguments) {
        return in(folder, Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(), new SmallPassengerVessels()),
            arguments);
    }

    static ConsoleRun in(Path folder, Catalogue catalogue, String... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var terminal = new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), folder,
            Clock.fixed(NOW, ZoneOffset.UTC));
        int exit = new Console(terminal, () -> catalogue).run(arguments);
        return new ConsoleRun(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
