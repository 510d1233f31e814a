// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;

import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

import garboard.checks.Catalogue;
import garboard.checks.PracticeExtensions;

/** The headless application. Its answer is the exit code. */
public final class ConsoleApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        // The workbook library logs through an interface without anything behind it, which would complain on every start.
        System.setProperty("log4j2.loggerContextFactory", "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        var arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        // UTF-8 whatever the platform says: units and marks must arrive whole in a pipe.
        var out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        var err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        var terminal = new Terminal(out, err, Path.of("").toAbsolutePath(), Clock.systemDefaultZone());
        var console = new Console(terminal,
                () -> Catalogue.of(PracticeExtensions.practices(RegistryFactory.getRegistry())));
        try {
            return console.run(arguments);
        } finally {
            out.flush();
        }
    }

    @Override
    public void stop() {
        // The commands run on the calling thread and end by themselves.
    }
}
