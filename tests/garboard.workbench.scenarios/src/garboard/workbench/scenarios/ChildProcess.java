// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.TimeUnit;

import org.eclipse.core.runtime.Platform;

/**
 * The window in a process of its own, with a hand in it that does one deed: for what cannot be tried in the process of the tests, as being
 * killed, or another scale of the screen.
 */
final class ChildProcess implements AutoCloseable {

    private static final long LONGEST_S = 120;

    private final Process process;
    private final Path mark;
    private final Path log;

    private ChildProcess(Process process, Path mark, Path log) {
        this.process = process;
        this.mark = mark;
        this.log = log;
    }

    /**
     * @param application the id of an application that extends {@link ChildApplication}
     * @param deed what it does
     * @param data the user's folder
     * @param environment what is set beside the environment of the tests
     */
    static ChildProcess start(String application, Deed deed, Path data, Map<String, String> environment) throws IOException {
        Path folder = Files.createTempDirectory("garboard-child");
        Path mark = folder.resolve("mark");
        Path log = folder.resolve("log.txt");
        Properties configuration = new Properties();
        Path own = Path.of(Platform.getConfigurationLocation().getURL().getPath()).resolve("config.ini");
        try (Reader in = Files.newBufferedReader(own, StandardCharsets.ISO_8859_1)) {
            configuration.load(in);
        }
        configuration.setProperty("eclipse.application", application);
        configuration.setProperty("osgi.configuration.area.default", folder.toUri().toString());
        try (Writer out = Files.newBufferedWriter(folder.resolve("config.ini"), StandardCharsets.ISO_8859_1)) {
            configuration.store(out, null);
        }
        var command = new ArrayList<String>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true", "-cp", configuration.getProperty("osgi.framework").replaceFirst("^file:", ""),
            "org.eclipse.core.runtime.adaptor.EclipseStarter", "-configuration", folder.toUri().toString(), "-data", data.toString(),
            "-application", application, "-deed", deed.name(), "-mark", mark.toString()));
        var builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        return new ChildProcess(builder.start(), mark, log);
    }

    /** Waits until the deed is done and the process waits for its end. */
    void awaitMark() throws IOException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_S);
        while (!Files.exists(mark)) {
            if (!process.isAlive()) {
                throw new AssertionError("The process ended before its deed was done:\n" + told());
            }
            if (System.nanoTime() > end) {
                throw new AssertionError("The deed was not done in time:\n" + told());
            }
            pause();
        }
    }

    private void pause() {
        try {
            process.waitFor(50, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** What the deed left in its mark. */
    String result() throws IOException {
        return Files.readString(mark);
    }

    /** Ends it as the power cut does: no handler of it runs. */
    void kill() {
        process.destroyForcibly();
        awaitEnd();
    }

    private void awaitEnd() {
        try {
            if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
                throw new AssertionError("The process does not end");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private String told() {
        try {
            return Files.exists(log) ? Files.readString(log) : "";
        } catch (IOException unreadable) {
            return unreadable.toString();
        }
    }

    @Override
    public void close() {
        if (process.isAlive()) {
            kill();
        }
    }
}
